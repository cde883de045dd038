using System.Text;
using System.Text.Json;
using BrewDeck.Deck;

namespace BrewDeck.Profiles;

/// <summary>Reads JSON into <see cref="SourceNode"/>s: 64 levels at most, a member given twice refused.</summary>
internal sealed class JsonSource(byte[] json, string file)
{
    private int _line = 1;
    private long _counted;

    /// <exception cref="ProfileException">Not JSON.</exception>
    public static SourceNode Read(string text, string file)
    {
        if (string.IsNullOrWhiteSpace(text))
            throw ProfileError.At(file, 1, "is empty; a BeerJSON document begins {\"beerjson\":");
        var bytes = Encoding.UTF8.GetBytes(text);
        var reader = new Utf8JsonReader(bytes, new JsonReaderOptions { MaxDepth = 64 });
        try
        {
            reader.Read();
            var root = new JsonSource(bytes, file).Node(ref reader, null, "");
            return reader.Read()
                ? throw ProfileError.At(file, 1, "has something after its end; a document is one object") : root;
        }
        catch (JsonException e)
        {
            throw ProfileError.At(file, (int)(e.LineNumber ?? 0) + 1,
                $"is not JSON ({Brief(e.Message)}); check it with the program that wrote it");
        }
    }

    private static string Brief(string message) =>
        ProfileError.OneLine(message.Split(" LineNumber", 2)[0].Split(" Path", 2)[0].TrimEnd('.'));

    private SourceNode Node(ref Utf8JsonReader reader, SourceNode? parent, string name) => reader.TokenType switch
    {
        JsonTokenType.StartObject => Members(ref reader, new(parent, name, LineOf(ref reader), null)),
        JsonTokenType.StartArray => Items(ref reader, new(parent, name, LineOf(ref reader), null)),
        JsonTokenType.String => new(parent, name, LineOf(ref reader), Text(ref reader)),
        JsonTokenType.Null => new(parent, name, LineOf(ref reader), ""),
        _ => new(parent, name, LineOf(ref reader),
            Encoding.UTF8.GetString(reader.ValueSpan))
        { IsNumber = reader.TokenType == JsonTokenType.Number },
    };

    private SourceNode Members(ref Utf8JsonReader reader, SourceNode node)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
        {
            var member = Text(ref reader);
            if (!seen.Add(member))
                throw ProfileError.At(file, LineOf(ref reader),
                    $"{node.Path}/{ProfileError.OneLine(member)} is given twice; keep one");
            reader.Read();
            var part = Node(ref reader, node, member);
            part.Label = member.Replace("~", "~0", StringComparison.Ordinal)
                .Replace("/", "~1", StringComparison.Ordinal);
            node.Parts.Add(part);
        }

        return node;
    }

    private SourceNode Items(ref Utf8JsonReader reader, SourceNode node)
    {
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
        {
            var part = Node(ref reader, node, "");
            part.Label = node.Parts.Count.ToString(System.Globalization.CultureInfo.InvariantCulture);
            node.Parts.Add(part);
        }

        return node;
    }

    /// <summary>Lone surrogates cannot be told as text.</summary>
    private string Text(ref Utf8JsonReader reader)
    {
        try
        {
            return reader.GetString() ?? "";
        }
        catch (InvalidOperationException)
        {
            throw ProfileError.At(file, LineOf(ref reader), "has half a character in a text; save it as UTF-8");
        }
    }

    private int LineOf(ref Utf8JsonReader reader)
    {
        _line += json.AsSpan((int)_counted, (int)(reader.TokenStartIndex - _counted)).Count((byte)'\n');
        _counted = reader.TokenStartIndex;
        return _line;
    }
}
