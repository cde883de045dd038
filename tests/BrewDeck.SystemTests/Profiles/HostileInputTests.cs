using System.Diagnostics;
using System.Text;
using BrewDeck.Deck;
using BrewDeck.Profiles;
using CsCheck;

namespace BrewDeck.SystemTests.Profiles;

/// <summary>Whatever a file holds, it is read or refused with one short plain line, soon.</summary>
public sealed class HostileInputTests : IDisposable
{
    // generous, for the machines that test are shared; what it must catch (2^30 entities, quadratic growth) takes many minutes
    private static readonly TimeSpan Soon = TimeSpan.FromSeconds(60);

    private readonly string _folder = Directory.CreateTempSubdirectory("brewdeck-hostile-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    public static TheoryData<string> Hostile => [.. Made.Keys];

    private static readonly Dictionary<string, string> Made = new()
    {
        ["empty"] = "",
        ["deep TOML"] = "a = " + new string('[', 100_000) + new string(']', 100_000),
        ["deep tables"] = "[" + string.Join(".", Enumerable.Repeat("a", 50_000)) + "]\nb = 1\n",
        ["deep dotted keys"] = string.Join(".", Enumerable.Repeat("a", 50_000)) + " = 1\n",
        ["many keys"] = string.Concat(Enumerable.Range(0, 50_000).Select(i => $"k{i} = {i}\n")),
        ["many vessels"] = string.Concat(Enumerable.Repeat("[[vessel]]\nid = \"a\"\n", 20_000)),
        ["long key"] = new string('k', 500_000) + " = 1\n",
        ["long text"] = "name = \"" + new string('x', 500_000) + "\"\n",
        ["huge number"] = "name = " + new string('9', 100_000) + "\n",
        ["control characters"] = "name = \"a\u001b[31mb\u0007\"\n",
        ["escaped control characters"] = "name = \"a\\u001b[31mb\\u0007\"\n",
        ["half a character in TOML"] = "name = \"\\ud800\"\n",
        ["half a character in a key"] = "\"\\ud800\" = 1\n",
        ["no character"] = "name = \"\\UFFFFFFFF\"\n",
        ["zero bytes"] = new string('\0', 10_000),
        ["unclosed"] = "name = \"\"\"" + new string('x', 100_000),
        ["deep JSON"] = "{\"beerjson\":" + string.Concat(Enumerable.Repeat("[", 200_000)),
        ["deep JSON objects"] = string.Concat(Enumerable.Repeat("{\"beerjson\":", 60_000)),
        ["huge JSON number"] = "{\"beerjson\":{\"version\":1e999999}}",
        ["wide JSON"] = "{\"beerjson\":{\"version\":1,\"recipes\":[" + string.Join(",", Enumerable.Repeat("{}", 100_000)) + "]}}",
        ["deep XML"] = string.Concat(Enumerable.Repeat("<A>", 100_000)),
        ["entity bomb"] = "<!DOCTYPE a [<!ENTITY x0 \"ha\">" + string.Concat(Enumerable.Range(1, 30).Select(i => $"<!ENTITY x{i} \"&x{i - 1};&x{i - 1};\">")) + "]><RECIPES>&x30;</RECIPES>",
        ["external entity"] = "<!DOCTYPE a [<!ENTITY x SYSTEM \"file:///etc/hostname\">]><RECIPES>&x;</RECIPES>",
        ["external subset"] = "<!DOCTYPE a SYSTEM \"http://127.0.0.1:1/x.dtd\"><RECIPES/>",
        ["undeclared entity"] = "<RECIPES>&x;</RECIPES>",
        ["wide XML"] = "<RECIPES>" + string.Concat(Enumerable.Repeat("<A/>", 150_000)) + "</RECIPES>",
        ["pieces of text in XML"] = "<RECIPES>" + string.Concat(Enumerable.Repeat("<![CDATA[a]]>", 60_000)) + "</RECIPES>",
    };

    [Theory]
    [MemberData(nameof(Hostile))]
    public void Is_refused_in_one_short_line_soon(string name)
    {
        var path = Path.Combine(_folder, "file");
        File.WriteAllText(path, Made[name]);
        var watch = Stopwatch.StartNew();
        AssertOneLine(Assert.Throws<ProfileException>(() => ConvertCommand.Read(path, Catalogue.Empty)).Message);
        AssertOneLine(Assert.Throws<ProfileException>(() => BrewhouseFile.Read(Made[name], path)).Message);
        AssertOneLine(Assert.Throws<ProfileException>(() => CatalogueOrRefusal(Made[name], path)).Message);
        Assert.True(watch.Elapsed < Soon, $"{watch.Elapsed}");
    }

    [Fact]
    public void Bytes_that_are_no_text_are_refused()
    {
        var path = Path.Combine(_folder, "file");
        File.WriteAllBytes(path, [.. "name = \""u8, 0xC3, 0x28, .. "\""u8]);
        Assert.Equal($"{path}:1: is not UTF-8 text; save it as UTF-8", Refusal(path));
        File.WriteAllBytes(path, new byte[3 << 20]);
        Assert.Equal($"{path}: is larger than 1024 KiB; that is no profile", Refusal(path));
    }

    [Fact]
    public void Random_bytes_never_throw_anything_else() => Gen.Byte.Array[0, 300].Sample(bytes =>
    {
        var text = Encoding.Latin1.GetString(bytes);
        foreach (var read in (Action<string>[])[t => BrewhouseFile.Read(t, "f"), t => BeerJsonReader.Read(t), t => BeerXmlReader.Read(t)])
            AssertOneLine(Assert.Throws<ProfileException>(() => read(text)).Message);
    });

    /// <summary>A good file with a few of its characters changed is read or refused, never worse.</summary>
    [Fact]
    public void Damaged_files_are_read_or_refused()
    {
        var files = new (string Text, Action<string> Read)[]
        {
            (Sample("brewhouse.toml"), t => BrewhouseFile.Read(t, "f")),
            (Sample("recipe.toml"), t => RecipeFile.Read(t, "f", Catalogue.Empty)),
            (Sample("recipe.xml"), t => BeerXmlReader.Read(t)),
            (BeerJsonFiles.Document("real-CheaterHops.json"), t => BeerJsonReader.Read(t)),
        };
        var change = Gen.Select(Gen.Int[0, 1 << 20], Gen.OneOf("\"", "[", "]", "{", "}", "<", ">", "=", "\n", "9", "-", "e", ".", ",", "\0", "é", "\ud800", ""));
        Gen.Select(Gen.Int[0, files.Length - 1], change.Array[1, 4]).Sample((which, changes) =>
        {
            var text = files[which].Text;
            foreach (var (at, piece) in changes)
                text = text[..(at % text.Length)] + piece + text[(at % text.Length + 1)..];
            if (Record.Exception(() => files[which].Read(text)) is { } thrown)
                AssertOneLine(Assert.IsType<ProfileException>(thrown).Message);
        }, iter: 400);
    }

    private static string Refusal(string path) => Assert.Throws<ProfileException>(() => ConvertCommand.Read(path, Catalogue.Empty)).Message;

    /// <summary>An empty catalogue is a good one.</summary>
    private static void CatalogueOrRefusal(string text, string path)
    {
        if (CatalogueFile.Read(text, path).Hops.IsEmpty)
            throw new ProfileException("nothing in it");
    }

    private static string Sample(string name) => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Profiles", "Files", name));

    private static void AssertOneLine(string message)
    {
        Assert.True(message.Length < 600, message);
        Assert.DoesNotContain(message, char.IsControl);
    }
}
