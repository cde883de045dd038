using System.Text;

namespace BrewDeck.Deck.Wording;

/// <summary>
/// The messages of one language, read from a gettext catalogue (.po): <c>msgid</c> is the English text, <c>msgstr</c> its translation,
/// <c>msgctxt</c> keeps names of things apart from messages. Entries marked fuzzy or without a translation are left out, as gettext does.
/// </summary>
public sealed class Catalogue
{
    /// <summary>Between context and message in a key, as in gettext's own binary catalogues.</summary>
    public const char ContextMark = '\u0004';

    private readonly Dictionary<string, string> _messages = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string>.AlternateLookup<ReadOnlySpan<char>> _lookup;

    private Catalogue() => _lookup = _messages.GetAlternateLookup<ReadOnlySpan<char>>();

    public IReadOnlyDictionary<string, string> Messages => _messages;

    public string? Find(ReadOnlySpan<char> key) => _lookup.TryGetValue(key, out var said) ? said : null;

    /// <summary>A catalogue of this assembly.</summary>
    internal static Catalogue Embedded(string file)
    {
        using var stream = typeof(Catalogue).Assembly.GetManifestResourceStream(file) ?? throw new InvalidOperationException($"{file} is not embedded");
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return Read(reader);
    }

    /// <exception cref="FormatException">A line that is none of a catalogue, or a message that stands there twice.</exception>
    public static Catalogue Read(TextReader reader)
    {
        var catalogue = new Catalogue();
        var entry = new Entry();
        var number = 0;
        while (reader.ReadLine() is { } line)
        {
            number++;
            if (!entry.Takes(line.Trim()))
            {
                catalogue.Keep(entry, number);
                entry = new Entry();
                if (!entry.Takes(line.Trim()))
                    throw new FormatException($"line {number}: right is msgid, msgstr or msgctxt with a text in quotation marks");
            }
        }
        catalogue.Keep(entry, number);
        return catalogue;
    }

    private void Keep(Entry entry, int line)
    {
        if (entry is { Id.Length: > 0, Said.Length: > 0, Fuzzy: false } && !_messages.TryAdd(entry.Key, entry.Said.ToString()))
            throw new FormatException($"before line {line}: \"{entry.Id}\" stands there twice");
    }

    private sealed class Entry
    {
        private StringBuilder? _part;
        private StringBuilder? _context;

        public StringBuilder Id { get; } = new();

        public StringBuilder Said { get; } = new();

        public bool Fuzzy { get; private set; }

        public string Key => _context is null ? Id.ToString() : $"{_context}{ContextMark}{Id}";

        /// <returns>False: the line begins the next entry, or is none of a catalogue.</returns>
        public bool Takes(string line)
        {
            if (line.Length == 0)
                return _part is null;
            if (line[0] == '#')
            {
                Fuzzy |= line.StartsWith("#,", StringComparison.Ordinal) && line.Contains("fuzzy", StringComparison.Ordinal);
                return _part is null;
            }
            if (line[0] == '"')
                return _part is not null && Add(line);
            var space = line.IndexOf(' ', StringComparison.Ordinal);
            return space > 0 && Begins(line[..space]) && Add(line[(space + 1)..]);
        }

        private bool Begins(string keyword)
        {
            StringBuilder? part = keyword switch
            {
                "msgctxt" when _part is null => _context = new StringBuilder(),
                "msgid" when _part is null || _part == _context => Id,
                "msgstr" when _part == Id => Said,
                _ => null,
            };
            _part = part ?? _part;
            return part is not null;
        }

        private bool Add(string quoted)
        {
            if (quoted.Length < 2 || quoted[0] != '"' || quoted[^1] != '"')
                return false;
            for (var i = 1; i < quoted.Length - 1; i++)
                _part!.Append(quoted[i] != '\\' ? quoted[i] : quoted[++i] switch { 'n' => '\n', 't' => '\t', var plain => plain });
            return true;
        }
    }
}
