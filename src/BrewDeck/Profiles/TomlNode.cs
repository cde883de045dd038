namespace BrewDeck.Profiles;

/// <summary>A TOML document as a plain tree in which every part knows its line.</summary>
/// <param name="Line">Counts from 1.</param>
internal abstract record TomlNode(int Line)
{
    /// <summary>A value as written, for messages.</summary>
    public abstract string Kind { get; }

    internal sealed record Text(string Value, int Line) : TomlNode(Line)
    {
        public override string Kind => "text";
    }

    /// <param name="Written">Digits as in the file, so that no precision is lost on the way.</param>
    internal sealed record Number(string Written, int Line) : TomlNode(Line)
    {
        public override string Kind => "a number";
    }

    internal sealed record Other(string What, int Line) : TomlNode(Line)
    {
        public override string Kind => What;
    }

    internal sealed record List(IReadOnlyList<TomlNode> Items, int Line) : TomlNode(Line)
    {
        public override string Kind => "a list";
    }

    internal sealed record Table(int Line) : TomlNode(Line)
    {
        /// <summary>In the order of the file.</summary>
        public OrderedDictionary<string, Entry> Entries { get; } = new(StringComparer.Ordinal);

        public override string Kind => "a table";
    }

    /// <summary>Tables written with double brackets.</summary>
    internal sealed record Tables(List<Table> Items, int Line) : TomlNode(Line)
    {
        public override string Kind => "a list of tables";
    }

    /// <param name="Line">Of the key.</param>
    internal sealed record Entry(TomlNode Value, int Line);
}
