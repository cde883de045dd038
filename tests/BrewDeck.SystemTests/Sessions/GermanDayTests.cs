using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;
using static BrewDeck.SystemTests.Sessions.AtTheKeys;

namespace BrewDeck.SystemTests.Sessions;

/// <summary>A brew day in German by keys, decimal commas typed and shown; its screens are goldens to be read aloud.</summary>
public sealed class GermanDayTests
{
    private static readonly Tongue German = Tongue.Of("de")!;

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void A_whole_day_is_brewed_in_German(int columns, int rows)
    {
        using var at = new AtTheKeys(columns, rows, German);
        var brewer = new BrewerByKeys(at, Space, Comma, Dial);

        brewer.Begin(ImportedRecipe.Name, at.DownTo, () => at.Strike(Down, null).Line("40,5").Strike(Space, null), Space);
        brewer.Until(StepKind.DoughIn);
        at.WaitUntilDue();
        brewer.TypeWhatIsExpected();
        at.Strike(Space, "r", Enter);
        brewer.Until(StepKind.Lauter);
        at.Line("12,5").Strike(Escape, Escape, "u");
        brewer.Until(StepKind.Boil);
        EachPage(at);
        brewer.Until(s => s.Steps.Single(x => x.Spec.Kind == StepKind.Pitch).Status == RunStatus.Complete);

        Assert.DoesNotMatch(@"[0-9]\.[0-9]", at.Kept.Replace(" .. ", "", StringComparison.Ordinal));
        Assert.InRange(at.Session.State!.Plan!.Totals.FermenterL, 40.4, 40.6);
        SessionGoldens.Same($"german-day-{columns}x{rows}", at.Kept);
    }

    private static void EachPage(AtTheKeys at)
    {
        at.Strike("?", Escape).Strike("p", Escape).Strike("l", Escape).Strike("t", Escape).Strike("f", Escape).Strike("b", Escape);
        at.Strike("n").Line("riecht gut").Strike("s").Line("nein").Strike(Escape).Strike("x").Line("nein").Strike(Escape);
        at.Strike("h", "h").Strike("w").Strike("g", "u", "t");
        Assert.IsType<DeckScreen>(at.Session.Screen);
    }

    private static string Comma(ReadingKind kind, double value) => BrewerByKeys.Decimal(kind, value).Replace('.', ',');

    private static double Dial(StepKind step, ReadingKind kind) => (step, kind) switch
    {
        (StepKind.DoughIn, ReadingKind.Temperature) => -1.7,
        (StepKind.Lauter, ReadingKind.Gravity) => -0.002,
        (StepKind.KnockOut, ReadingKind.Volume) => -1.1,
        _ => 0,
    };
}
