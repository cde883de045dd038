namespace BrewDeck.Profiles;

/// <summary>A table of a file after its check against the schema: values in the units that the schema names.</summary>
/// <param name="Line">Of the table.</param>
internal sealed record SchemaEntry(string File, int Line)
{
    private readonly Dictionary<string, (object Value, int Line)> _values = new(StringComparer.Ordinal);

    public bool Has(string key) => _values.ContainsKey(key);

    public double Number(string key) => (double)_values[key].Value;

    public double? MaybeNumber(string key) => _values.TryGetValue(key, out var found) ? (double)found.Value : null;

    public Core.Waters.Band? MaybeBand(string key) => _values.TryGetValue(key, out var found) ? (Core.Waters.Band)found.Value : null;

    public string Text(string key) => MaybeText(key) ?? "";

    public string? MaybeText(string key) => _values.TryGetValue(key, out var found) ? (string)found.Value : null;

    public IReadOnlyList<string> Texts(string key) =>
        _values.TryGetValue(key, out var found) ? (IReadOnlyList<string>)found.Value : [];

    public (double Number, string Unit) Amount(string key) => ((double, string))_values[key].Value;

    public IReadOnlyList<SchemaEntry> Many(string key) =>
        _values.TryGetValue(key, out var found) ? (IReadOnlyList<SchemaEntry>)found.Value : [];

    public SchemaEntry? One(string key) => Many(key) is [var only] ? only : null;

    /// <summary>Line of a key, or of the table when the key was left to its default.</summary>
    public int LineOf(string key) => _values.TryGetValue(key, out var found) ? found.Line : Line;

    public void Set(string key, object value, int line) => _values[key] = (value, line);

    public Deck.ProfileException Error(string key, string what) => ProfileError.At(File, LineOf(key), what);
}
