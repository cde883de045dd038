using System.Text.Json.Nodes;
using BrewDeck.Deck;
using BrewDeck.Profiles;

namespace BrewDeck.SystemTests.Profiles;

/// <summary>
/// Change any one value of a document: the recipe, the notes or the refusal must change with it. A value that can change without a
/// trace is one that was lost in silence. A part reported by its path covers the values in it. The version of the
/// format is no content.
/// </summary>
public sealed class NothingLostTests
{
    private static readonly Catalogue Catalogue = ProfileFolder.BesideProgram("/nowhere").Catalogue;

    public static TheoryData<string> Documents =>
        [.. BeerJsonFiles.Documents.Where(d => Outcome(BeerJsonFiles.Document(d)).StartsWith("name = ", StringComparison.Ordinal))];

    [Theory]
    [MemberData(nameof(Documents))]
    public void Every_value_of_a_BeerJSON_recipe_leaves_a_trace(string name)
    {
        var text = BeerJsonFiles.Document(name);
        var before = Outcome(text);
        var count = Leaves(JsonNode.Parse(text)!).Count();
        Assert.True(count > 20);
        for (var i = 0; i < count; i++)
        {
            var document = JsonNode.Parse(text)!;
            var leaf = Leaves(document).ElementAt(i);
            var path = leaf.GetPath()[1..].Replace("]", "", StringComparison.Ordinal).Replace('[', '/').Replace('.', '/');
            leaf.ReplaceWith(Other(leaf));
            if (path != "/beerjson/version" && !IsCovered(path, before))
                Assert.True(before != Outcome(document.ToJsonString()), $"{path} can change without a trace");
        }
    }

    [Fact]
    public void Every_value_of_a_BeerXML_recipe_leaves_a_trace()
    {
        var text = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Profiles", "Files", "recipe.xml"));
        var before = XmlOutcome(text);
        var count = System.Xml.Linq.XDocument.Parse(text).Descendants().Count(e => !e.HasElements);
        Assert.True(count > 60);
        for (var i = 0; i < count; i++)
        {
            var document = System.Xml.Linq.XDocument.Parse(text);
            var leaf = document.Descendants().Where(e => !e.HasElements).ElementAt(i);
            var path = PathOf(leaf);
            leaf.Value = double.TryParse(leaf.Value, out var number) ? $"{number * 1.25 + 1}" : leaf.Value + "x";
            if (!IsCovered(path, before))
                Assert.True(before != XmlOutcome(document.ToString()), $"{path} can change without a trace");
        }
    }

    private static bool IsCovered(string path, string outcome) => outcome.Split('\n')
        .Where(n => n.StartsWith('/') && n.Contains("not carried over", StringComparison.Ordinal))
        .Any(n => (path + "/").StartsWith(n.Split(": ")[0] + "/", StringComparison.Ordinal));

    private static string PathOf(System.Xml.Linq.XElement element)
    {
        var twins = element.Parent?.Elements(element.Name).ToList();
        var label = twins is { Count: > 1 } ? $"{element.Name}[{twins.IndexOf(element) + 1}]" : $"{element.Name}";
        return $"{(element.Parent is { } parent ? PathOf(parent) : "")}/{label}";
    }

    private static JsonNode Other(JsonValue leaf) => leaf.GetValueKind() switch
    {
        System.Text.Json.JsonValueKind.Number => JsonValue.Create(leaf.GetValue<double>() * 1.25 + 1),
        System.Text.Json.JsonValueKind.String => JsonValue.Create(leaf.GetValue<string>() + "x"),
        _ => JsonValue.Create("changed"),
    };

    private static IEnumerable<JsonValue> Leaves(JsonNode? node) => node switch
    {
        JsonObject members => members.SelectMany(m => Leaves(m.Value)),
        JsonArray items => items.SelectMany(Leaves),
        JsonValue value => [value],
        _ => [],
    };

    private static string Outcome(string json) => Told(() => BeerJsonReader.Read(json, "d", Catalogue));

    private static string XmlOutcome(string xml) => Told(() => BeerXmlReader.Read(xml, "d", Catalogue));

    private static string Told(Func<Converted> read)
    {
        try
        {
            var converted = read();
            return string.Join('\n', converted.Recipes.Select(RecipeFile.Write).Concat(converted.Notes));
        }
        catch (ProfileException e)
        {
            return e.Message;
        }
    }
}
