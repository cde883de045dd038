using System.Text;
using System.Xml;
using BrewDeck.Deck;

namespace BrewDeck.Profiles;

/// <summary>
/// Reads XML into <see cref="SourceNode"/>s. Document types are refused, so no entity can be declared, expanded or
/// fetched; 32 levels and 200,000 elements at most.
/// </summary>
internal sealed class XmlSource(string file)
{
    private const int Deepest = 32;
    private const int MostElements = 200_000;
    private int _elements;

    /// <exception cref="ProfileException">Not XML, or XML that is refused.</exception>
    public static SourceNode Read(TextReader text, string file) => Read(XmlReader.Create(text, Settings), file);

    /// <summary>As bytes, for the encoding that the document declares.</summary>
    /// <exception cref="ProfileException">Not XML, or XML that is refused.</exception>
    public static SourceNode Read(Stream bytes, string file) => Read(XmlReader.Create(bytes, Settings), file);

    private static XmlReaderSettings Settings => new()
    {
        DtdProcessing = DtdProcessing.Prohibit,
        XmlResolver = null,
        IgnoreComments = true,
        IgnoreProcessingInstructions = true,
        IgnoreWhitespace = true,
        MaxCharactersInDocument = 4 << 20,
    };

    private static SourceNode Read(XmlReader reader, string file)
    {
        using var closing = reader;
        try
        {
            reader.MoveToContent();
            return new XmlSource(file).Element(reader, null);
        }
        catch (XmlException e)
        {
            var what = e.Message.Contains("DTD", StringComparison.Ordinal)
                ? "declares a document type; BeerXML has none, remove it"
                : $"is not XML ({ProfileError.OneLine(e.Message)})";
            throw ProfileError.At(file, Math.Max(1, e.LineNumber), what);
        }
    }

    private SourceNode Element(XmlReader reader, SourceNode? parent)
    {
        var line = ((IXmlLineInfo)reader).LineNumber;
        if (reader.Depth > Deepest || ++_elements > MostElements)
            throw ProfileError.At(file, line, "is deeper or longer than any recipe; check the program that wrote it");
        var node = new SourceNode(parent, reader.Name, line, null);
        Attributes(reader, node);
        var text = reader.IsEmptyElement ? "" : Content(reader, node);
        if (node.Parts.Count == 0)
            node.Text = text;
        else if (text.Length > 0)
            node.Parts.Add(new(node, "text()", line, text));
        return node;
    }

    private static void Attributes(XmlReader reader, SourceNode node)
    {
        while (reader.MoveToNextAttribute())
            node.Parts.Add(new(node, "@" + reader.Name, node.Line, reader.Value));
        reader.MoveToElement();
    }

    /// <summary>Puts child elements into the parts, twins numbered from 1, and returns the text between them.</summary>
    private string Content(XmlReader reader, SourceNode node)
    {
        var text = new StringBuilder();
        while (reader.Read() && reader.NodeType != XmlNodeType.EndElement)
            if (reader.NodeType == XmlNodeType.Element)
                node.Parts.Add(Element(reader, node));
            else
                text.Append(reader.Value);
        foreach (var twins in node.Parts.GroupBy(p => p.Name).Where(g => g.Count() > 1))
            foreach (var (number, twin) in twins.Index())
                twin.Label = $"{twin.Name}[{number + 1}]";
        return text.ToString().Trim();
    }
}
