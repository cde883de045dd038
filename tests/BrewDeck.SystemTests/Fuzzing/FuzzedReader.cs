using System.Text;
using BrewDeck.Deck;
using BrewDeck.Deck.Probes;
using BrewDeck.Deck.Wording;
using BrewDeck.Logbook;
using BrewDeck.Logbook.Moving;
using BrewDeck.Profiles;
using BrewDeck.Rehearsals;
using BrewDeck.SystemTests.Logbook;
using BrewDeck.SystemTests.Profiles;

namespace BrewDeck.SystemTests.Fuzzing;

/// <summary>Something that reads what people or other programs wrote, and good examples of it.</summary>
/// <param name="Read">Throws only <see cref="ProfileException"/> or <see cref="LogbookException"/>.</param>
internal sealed record FuzzedReader(string Name, string[] Good, Action<byte[]> Read)
{
    private static readonly string[] Quantities =
    [
        "65 L", "6.5gal", "11 lb 4 oz", "154f", "12 °P", "1048", "1.048", "1 h 30", "1:30", "75 %", "3.45 kW", "90 min", "41,5", "66.5 °C", "5.2 pH", "30 IBU",
    ];

    private static readonly string[] Clocks = ["7:30", "0730", "23:59", "7", "7.30", "7pm"];

    public static IReadOnlyList<FuzzedReader> All()
    {
        var catalogue = CatalogueFile.Read(Bundled("catalogue")[0], "f");
        return
        [
            Text("brewhouse", Bundled("brewhouses"), t => BrewhouseFile.Read(t, "f")),
            Text("recipe", Bundled("recipes"), t => RecipeFile.Read(t, "f", catalogue)),
            Text("water", Bundled("waters"), t => WaterFile.Read(t, "f")),
            Text("water target", Bundled("water-targets"), t => WaterTargetFile.Read(t, "f")),
            Text("catalogue", Bundled("catalogue"), t => CatalogueFile.Read(t, "f")),
            Text("BeerJSON", [BeerJsonFiles.Document("real-CheaterHops.json")], t => BeerJsonReader.Read(t)),
            new("BeerXML", [Sample("recipe.xml")], b => BeerXmlReader.Read(new MemoryStream(b))),
            new("log import", [Archive()], b => LogArchive.Read(new StreamReader(new MemoryStream(b)), "f")),
            new("tape", [Tape()], b => TapeEvents(TapeScan.Of(b))),
            new("event", [.. Days.Events(steps: 2).Select(e => Encoding.UTF8.GetString(EventCodec.Encode(e)))], b => Explained(() => EventCodec.Decode(b))),
            new("quantity", Quantities, b => Quantity(Encoding.UTF8.GetString(b))),
            new("probe line", ["""{"vessel":"tun","temperature_c":66.4,"at":"2026-05-30T08:00:00Z"}""", """{"vessel":"kettle","volume_l":41.5,"gravity_sg":1.048}"""], b => ProbeLine.Read(b, DateTimeOffset.MaxValue, out _)),
            new("clock", Clocks, b => ClockReader.Next(Encoding.UTF8.GetString(b), DateTimeOffset.UnixEpoch, TimeZoneInfo.Utc)),
        ];
    }

    private static FuzzedReader Text(string name, string[] good, Action<string> read) => new(name, good, b => read(ProfileText.Decoded(b, "f")));

    private static void Quantity(string text)
    {
        foreach (var dimension in Enum.GetValues<Dimension>())
            Assert.True(QuantityReader.Read(text, dimension) is { Ok: false } || double.IsFinite(QuantityReader.Read(text, dimension).Value), text);
    }

    private static void TapeEvents(TapeScan scan)
    {
        foreach (var line in scan.Lines)
            Explained(line.ToEvent);
    }

    /// <summary>As the journal tells it.</summary>
    private static void Explained<T>(Func<T> read) => DiskTrouble.Explain("f", read);

    private static string[] Bundled(string folder) => [.. ProfileText.Inside(folder).Select(ProfileText.Of)];

    private static string Sample(string name) => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Profiles", "Files", name));

    private static string Archive()
    {
        using var journal = Journal.Open(new MemoryDisk(), Days.StatusOf);
        Write(journal);
        var text = new StringWriter();
        LogArchive.Write(text, journal, "/nowhere");
        return text.ToString().Replace("\"files\":0", "\"files\":1", StringComparison.Ordinal) + """{"file":"recipes/own.toml","text":"name = \"Own\""}""" + "\n";
    }

    private static string Tape()
    {
        using var journal = Journal.Open(new MemoryDisk(), Days.StatusOf);
        Write(journal);
        return string.Concat(journal.Lines(1).Select(l => Encoding.ASCII.GetString(l.ToUtf8())));
    }

    private static void Write(Journal journal)
    {
        journal.Open(Days.Opened(steps: 1));
        foreach (var happened in Days.Events(steps: 1).Skip(1))
            journal.Append(1, happened);
    }
}
