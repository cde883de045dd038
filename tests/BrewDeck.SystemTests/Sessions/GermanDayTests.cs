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

    /// <summary>The pages before and after the day, in the order in which a brewer meets them. At 80x24, where least fits.</summary>
    [Fact]
    public void The_pages_beside_the_day_are_in_German()
    {
        using var at = new AtTheKeys(80, 24, German);
        SetUp(at);
        Recipes(at);
        Reckoner(at);
        var before = at.Kept;
        Day(at);
        var day = at.Kept.Length;
        AfterTheDay(at);
        Logbook(at);

        var seen = before + at.Kept[day..];
        Assert.DoesNotMatch(@"[0-9]\.[0-9]", seen.Replace(" .. ", "", StringComparison.Ordinal));
        Assert.DoesNotMatch(@"(?i)\b(the|your|gravity|batch|batches|such|write|nothing|measured|valid|source|gives|takes|from|not)\b", seen);
        SessionGoldens.Same("german-pages-80x24", seen);
    }

    /// <summary>A brewhouse by its usual answers, one of them measured.</summary>
    private static void SetUp(AtTheKeys at)
    {
        at.Pick("Neue Anlage");
        for (var i = 0; at.Session.Screen.Title != "Meine Anlage: schreiben?"; i++)
        {
            Assert.InRange(i, 0, 60);
            if (at.Session.Screen.Title.StartsWith("Pfanne: Wie viel Heizleistung", StringComparison.Ordinal))
                at.Line("9999 kW").Strike(Escape);
            if (at.Session.Screen.Title.StartsWith("Pfanne: Wie viel der Heizleistung", StringComparison.Ordinal))
                at.Strike(Down, Down, Enter).Line("42 L").Strike(Escape, Up, Up);
            at.Strike(Enter);
        }
        Home(at);
    }

    private static void Recipes(AtTheKeys at)
    {
        at.Pick("Rezepte").MoveTo("Quayside Amber").Strike("e");
        at.Pick("gewünschte Stammwürze").Line("viel").Strike(Escape);
        at.MoveTo("munich malt").Strike(Enter).Strike(Escape).Pick("+ Hopfen").Strike(Escape);
        Assert.Contains("Quayside Amber", at.Session.Screen.Title, StringComparison.Ordinal);
        at.Pick("+ Rast").Line("72").Strike(Escape);
        Assert.Contains("Quayside Amber", at.Session.Screen.Title, StringComparison.Ordinal);
        at.MoveTo("East Kent Golding").Strike(Enter, Down, Enter).Line("stopfen");
        at.Strike(Escape, Down, Enter);
        Assert.IsType<ListScreen>(at.Session.Screen);
        Home(at);
        at.Pick("Rezepte").MoveTo("Quayside Amber").Strike("b", Down, Enter, Escape, Space, Escape);
        Home(at);
    }

    private static void Reckoner(AtTheKeys at)
    {
        at.Pick("Rechner").Strike(Enter).Line("1,046").Strike(Enter).Line("40").Strike(Enter).Line("viel").Strike(Escape).Strike(Escape);
        var list = Assert.IsType<ListScreen>(at.Session.Screen);
        for (var row = 1; row < list.Rows.Length; row++)
            at.Strike(Down);
        at.Pick("Ein Salz im Wasser").Strike(Enter);
        Home(at);
        at.Pick("Tasten").Strike(PageDown, PageDown, PageDown, PageDown, PageDown);
        Home(at);
    }

    private static void Day(AtTheKeys at)
    {
        at.MoveTo("Neuer Brautag");
        var brewer = new BrewerByKeys(at, Space, Comma, Dial);
        brewer.Begin(ImportedRecipe.Name, at.DownTo, () => at.Strike(Space, null), Space);
        brewer.Until(s => s.Status == RunStatus.Complete);
    }

    private static void AfterTheDay(AtTheKeys at)
    {
        at.Strike(Space, PageDown, PageDown).Strike("f");
        at.Pick("Dichte").Line("viel").Strike(Escape).Pick("Dichte").Line("1,012").Strike(Down).Strike(Enter).Pick("Temperatur").Line("19,5").Pick("pH").Line("4,35");
        at.Pick("Termin: Dichte").Line("morgen").Pick("Termin: Abfüllen").Line("irgendwann").Strike(Escape);
        at.Pick("Flaschen").Strike(Enter).Pick("Flaschen").Strike(Down).Strike(Enter).Line("9").Line("3,4").Strike(Down).Strike(Enter).Line("20").Strike(Enter);
        at.Pick("Keg").Line("9").Line("2,4").Line("40").Strike(Escape).Pick("Keg").Line("99").Strike(Down).Strike(Enter).Line("2,4").Line("4").Strike(Enter);
        at.Pick("Andere Zugabe").Line("viel").Strike(Escape).Pick("Verkostung").Line("4 sauber, trocken");
        at.Pick("Termin für eine andere Zugabe").Line("Eichenchips").Line("3 d").Pick("Alles Eingetragene").Strike(Escape).Strike(Escape);
        Home(at);
    }

    private static void Logbook(AtTheKeys at)
    {
        at.Pick("Sude");
        at.Strike("m", "c", "o", "r", "r", "r", "e", "e", "h", "h").Strike("s").Line("Ferry").Strike("t").Strike(Space);
        Home(at);
        at.Pick("Lehren").Pick("Quayside 65");
        at.Strike("a");
        Home(at);
    }

    private static void Home(AtTheKeys at)
    {
        for (var i = 0; i < 9 && at.Session.Screen.Title != "BrewDeck"; i++)
        {
            if (at.Session.Screen.Overlay is ChoiceOverlay { Question: "Dieses Rezept verlassen?" })
                at.Strike(Down, Down, Enter);
            else
                at.Strike(at.Session.Screen is DeckScreen ? "q" : Escape);
        }
        Assert.Equal("BrewDeck", at.Session.Screen.Title);
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
