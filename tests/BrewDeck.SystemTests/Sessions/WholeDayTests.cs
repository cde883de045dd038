using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Screens;
using static BrewDeck.SystemTests.Sessions.AtTheKeys;

namespace BrewDeck.SystemTests.Sessions;

/// <summary>An imported recipe, scaled to the bundled brewhouse, planned and brewed from setting up to pitched wort.</summary>
public sealed class WholeDayTests
{
    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void An_imported_recipe_is_brewed_with_off_readings_an_undo_and_a_kill(int columns, int rows)
    {
        using var at = new AtTheKeys(columns, rows);
        var brewer = new BrewerByKeys(at, Space, BrewerByKeys.Decimal, Dial);

        brewer.Begin(ImportedRecipe.Name, at.DownTo, () => ScaleTo(at, "40"), Space);
        brewer.Until(StepKind.DoughIn);
        at.WaitUntilDue();
        brewer.TypeWhatIsExpected();
        at.Strike(Space, null);
        TakeTheFirstRemedy(at);
        brewer.Until(StepKind.Lauter);
        MistypeAndTakeBack(at);
        brewer.Until(StepKind.Boil);
        at.Wait(TimeSpan.FromMinutes(7));
        SurvivesAKill(at);
        brewer.Until(s => s.Steps.Single(x => x.Spec.Kind == StepKind.Pitch).Status == RunStatus.Complete);

        var off = at.Session.State!.Readings.Count(r => Math.Abs(r.Reading.Value - r.Expected) > (r.Reading.Kind == ReadingKind.Gravity ? 0.0015 : 0.6));
        Assert.True(off >= 3, $"{off} readings off plan");
        Assert.Contains(at.Events, e => e is RemedyChosen);
        Assert.Contains(at.Events, e => e is Undone);
        Assert.InRange(at.Session.State!.Plan!.Totals.FermenterL, 39.9, 40.1);
        SessionGoldens.Same($"imported-day-{columns}x{rows}", at.Kept);
        Assert.DoesNotMatch("… [0-9]+ more", at.Kept);
    }

    private static double Dial(StepKind step, ReadingKind kind) => (step, kind) switch
    {
        (StepKind.DoughIn, ReadingKind.Temperature) => -1.7,
        (StepKind.Lauter, ReadingKind.Volume) => 1.3,
        (StepKind.Lauter, ReadingKind.Gravity) => -0.002,
        (StepKind.KnockOut, ReadingKind.Volume) => -1.1,
        _ => 0,
    };

    private static void ScaleTo(AtTheKeys at, string litres)
    {
        at.Strike(Down, null).Line(litres);
        Assert.Contains("40.0 L into the fermenter", at.Text, StringComparison.Ordinal);
        at.Strike(Space, null).Strike(PageDown, null);
    }

    private static void TakeTheFirstRemedy(AtTheKeys at)
    {
        Assert.Contains("r shows ways back", at.Text, StringComparison.Ordinal);
        at.Strike("r", null);
        Assert.IsType<ChoiceOverlay>(at.Session.Screen.Overlay);
        at.Strike(Enter, null);
    }

    private static void MistypeAndTakeBack(AtTheKeys at)
    {
        var before = at.Session.Forecast!.Outlook.OriginalGravitySg.P50;
        at.Line("12.5");
        Assert.Contains("far from what is expected", Assert.IsType<ChoiceOverlay>(at.Session.Screen.Overlay).Question, StringComparison.Ordinal);
        at.Strike(Down, null).Strike(Enter, null);
        Assert.Contains("undo volume", at.Text, StringComparison.Ordinal);
        at.Strike("u", null);
        Assert.Equal(before, at.Session.Forecast!.Outlook.OriginalGravitySg.P50, 6);
    }

    private static void SurvivesAKill(AtTheKeys at)
    {
        var (screen, record) = (at.WithoutNotice(), at.Record);
        at.KillAndStartAgain();
        Assert.Equal(record, at.Record);
        Assert.Equal(screen, at.WithoutNotice());
    }
}
