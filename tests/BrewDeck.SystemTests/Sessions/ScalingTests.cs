using BrewDeck.Deck.Screens;
using BrewDeck.Profiles;
using static BrewDeck.SystemTests.Sessions.AtTheKeys;

namespace BrewDeck.SystemTests.Sessions;

/// <summary>A recipe moved to another brewhouse by keys only.</summary>
public sealed class ScalingTests : IDisposable
{
    private readonly AtTheKeys _at = new();

    public void Dispose() => _at.Dispose();

    [Fact]
    public void A_recipe_is_moved_to_another_brewhouse_and_saved()
    {
        To("Quayside 35");
        Assert.Contains(", then Quayside 35", Details(), StringComparison.Ordinal);
        Assert.Contains("1.048 1.048 gravity", Details(), StringComparison.Ordinal);
        _at.Strike(Space);
        Assert.Contains(Assert.IsType<TextScreen>(_at.Session.Screen).Lines, l => l.ToString().EndsWith("caramel malt 120", StringComparison.Ordinal));
        _at.Strike(Escape);
        _at.MoveTo("Into the fermenter").Line("18 L");
        _at.Strike("s");

        Assert.StartsWith("Saved to ", _at.Session.Screen.Notice!.ToString(), StringComparison.Ordinal);
        var path = Path.Combine(_at.Folder, "recipes", "quayside-amber-on-quayside-35.toml");
        var saved = RecipeFile.Read(File.ReadAllText(path), path, Catalogue.Empty);
        Assert.Equal((18, 1.048, 30, 3), (saved.BatchL, saved.OriginalGravitySg, saved.BitternessIbu, saved.MashThicknessLPerKg));
        _at.Strike(Escape);
        var list = Assert.IsType<ListScreen>(_at.Session.Screen);
        Assert.Equal("Quayside Amber", list.Rows[list.Selected].Cells[0]);
        _at.MoveTo("Quayside Amber on Quayside 35");
    }

    [Fact]
    public void What_is_not_kept_falls_where_the_brewhouse_lets_it()
    {
        To("Quayside 35");
        _at.Pick("Keep the gravity").Pick("Keep the bitterness");

        Assert.DoesNotContain("1.048 1.048 gravity", Details(), StringComparison.Ordinal);
        Assert.DoesNotContain("30.0 IBU 30.0 IBU", Details(), StringComparison.Ordinal);
    }

    [Fact]
    public void What_cannot_be_brewed_there_is_told_and_not_saved()
    {
        To("Quayside 35");
        _at.MoveTo("Into the fermenter").Line("60 L");
        Assert.Contains("at most 37.0 L", Details(), StringComparison.Ordinal);
        _at.Strike("s");

        Assert.Contains("not saved", _at.Session.Screen.Notice!.ToString(), StringComparison.Ordinal);
        _at.MoveTo("Into the fermenter").Line("0.2 L");
        Assert.Contains("outside 1.0 L to 2000.0 L", Assert.IsType<EntryOverlay>(_at.Session.Screen.Overlay).Fault!.ToString(), StringComparison.Ordinal);
    }

    private void To(string house)
    {
        _at.Pick("Recipes").MoveTo("Quayside Amber").Strike("b");
        for (var turns = 0; Assert.IsType<ListScreen>(_at.Session.Screen).Rows[0].Cells[1] != house; turns++)
        {
            Assert.InRange(turns, 0, 20);
            _at.Strike(Enter);
        }
    }

    /// <summary>The lines beside the list, their columns one blank apart.</summary>
    private string Details() => string.Join(
        "\n", Assert.IsType<ListScreen>(_at.Session.Screen).Details.Select(l => string.Join(' ', l.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries))));
}
