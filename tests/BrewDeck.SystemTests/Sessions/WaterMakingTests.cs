using BrewDeck.Core.Physics;
using BrewDeck.Core.Waters;
using BrewDeck.Deck.Screens;
using BrewDeck.Profiles;
using static BrewDeck.SystemTests.Sessions.AtTheKeys;

namespace BrewDeck.SystemTests.Sessions;

/// <summary>A water typed in from its analysis, by keys only.</summary>
public sealed class WaterMakingTests : IDisposable
{
    private readonly AtTheKeys _at = new();

    public void Dispose() => _at.Dispose();

    [Fact]
    public void An_analysis_from_nothing_is_saved_and_the_day_is_planned_with_it()
    {
        Choices();
        Assert.Contains("Type the analysis", _at.Pick("Water analysis").Text, StringComparison.Ordinal);
        Analysis(("calcium", "92"), ("magnesium", "11"), ("sodium", "24 ppm"), ("chloride", "40"), ("sulphate", "55"), ("bicarbonate", "250"));
        Assert.Contains("Cations and anions differ by 1.3 %.", _at.Text, StringComparison.Ordinal);
        _at.Pick("gypsum").Pick("acid on the shelf").MoveTo("its strength").Line("75 %");
        _at.Strike("s").Line("Hill spring");
        Assert.StartsWith("Saved to ", _at.Session.Screen.Notice!.ToString(), StringComparison.Ordinal);

        var water = WaterFile.Read(File.ReadAllText(PathOf("hill-spring.toml")), "hill-spring.toml");
        Assert.Equal(("Hill spring", 92.0, 250.0), (water.Source.Name, water.Source.Ions.CalciumMgPerL, Math.Round(water.Source.Ions.BicarbonateMgPerL, 6)));
        Assert.Equal([BrewingSalt.Gypsum], water.Salts);
        Assert.Equal(new AcidOnHand(AcidKind.Lactic, 0.75), water.Acid);

        _at.Strike(Escape);
        Assert.Equal("Hill spring", Cell("Water"));
        _at.Strike(Space);
        for (var page = 0; page < 20 && !_at.Text.Contains("Calcium in the treated water", StringComparison.Ordinal); page++)
            _at.Strike(PageDown);
        Assert.Contains("Calcium in the treated water", _at.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_slip_in_the_analysis_is_told_while_it_is_typed()
    {
        Choices();
        _at.Pick("Water analysis");
        Analysis(("calcium", "920"), ("chloride", "40"), ("sulphate", "55"), ("alkalinity", "205"));
        Assert.Matches(@"Cations and anions differ by [0-9.]+ %: more than 10 %", _at.Text);
        _at.Strike("u", "u", "u", "u");
        Assert.Contains("Type the analysis", _at.Text, StringComparison.Ordinal);
        _at.MoveTo("calcium").Line("1500");
        Assert.Contains("outside 0", Assert.IsType<EntryOverlay>(_at.Session.Screen.Overlay).Fault!.ToString(), StringComparison.Ordinal);
        _at.Strike(Escape).MoveTo("its strength").Line("80");
        Assert.Contains("Choose an acid first", Assert.IsType<EntryOverlay>(_at.Session.Screen.Overlay).Fault!.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_bundled_water_that_is_changed_becomes_an_own_one_and_its_old_version_stays()
    {
        Choices();
        _at.Pick("Water");
        var name = Cell("Water");
        _at.Pick("Water analysis").MoveTo("calcium").Line("60");
        _at.Strike(Escape);
        Assert.Equal("Leave this water?", _at.Session.Screen.Overlay!.Question);
        _at.Strike(Enter);
        Assert.Equal(name, Cell("Water"));
        var own = PathOf("hillside-spring.toml");
        Assert.Equal("Hillside spring", name);
        Assert.Equal(60, WaterFile.Read(File.ReadAllText(own), own).Source.Ions.CalciumMgPerL);

        _at.Pick("Water analysis").MoveTo("calcium").Line("61");
        _at.Strike("s");
        Assert.Equal(3, Directory.GetFiles(Path.Combine(_at.Folder, "waters")).Length);
        Assert.Equal(61, WaterFile.Read(File.ReadAllText(own), own).Source.Ions.CalciumMgPerL);
    }

    private void Choices() => _at.Pick("New brew day").Pick("Quayside 65").Pick("Quayside Amber");

    private void Analysis(params ReadOnlySpan<(string Row, string Typed)> lines)
    {
        foreach (var (row, typed) in lines)
            _at.MoveTo(row).Line(typed);
    }

    private string PathOf(string file) => Path.Combine(_at.Folder, "waters", file);

    private string Cell(string row) => Assert.IsType<ListScreen>(_at.Session.Screen).Rows.First(r => r.Cells[0] == row).Cells[1];
}
