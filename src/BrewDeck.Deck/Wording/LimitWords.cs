using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;

namespace BrewDeck.Deck.Wording;

/// <summary>What the plan was held against.</summary>
public static class LimitWords
{
    /// <param name="code">A limit's or a refusal's stable name.</param>
    /// <param name="house">Null: with tank and tun; of a single vessel only the kettle is there.</param>
    public static string Name(string code, Notation notation, Brewhouse? house = null) => code switch
    {
        LimitName.StrikeLiquorInTank when house is { Vessels.Length: 1 } => notation.Text("Strike liquor in the kettle"),
        LimitName.MashInTun when house is { Vessels.Length: 1 } => notation.Text("Mash in the kettle"),
        LimitName.MashCoversElements when house is { Vessels.Length: 1 } => notation.Text("Mash over the kettle's elements"),
        LimitName.StrikeLiquorInTank => notation.Text("Strike liquor in the tank"),
        LimitName.LiquorInTank => notation.Text("Liquor in the tank"),
        LimitName.SpargeLiquorInTank => notation.Text("Sparge liquor in the tank"),
        LimitName.StrikeTemperature => notation.Text("Temperature of the strike liquor"),
        LimitName.SpargeVolume => notation.Text("Sparge liquor left to use"),
        LimitName.MashInTun => notation.Text("Mash in the tun"),
        LimitName.MashInLauterTun => notation.Text("Mash in the lauter tun"),
        LimitName.WortInWhirlpool => notation.Text("Wort in the whirlpool"),
        LimitName.MashCoversElements => notation.Text("Mash over the tun's elements"),
        LimitName.DecoctionShare => notation.Text("Share of the mash that is boiled"),
        LimitName.DecoctionCoversElements => notation.Text("Decoction over the kettle's elements"),
        LimitName.WortInKettle => notation.Text("Wort in the kettle"),
        LimitName.WortCoversElements => notation.Text("Wort over the kettle's elements"),
        LimitName.WortInFermenter => notation.Text("Wort in the fermenter"),
        LimitName.FalseBottomLoad => notation.Text("Load on the false bottom by suction"),
        LimitName.SuctionHead => notation.Text("Suction head left to the pump"),
        LimitName.LiftOfPump => notation.Text("Lift for the pump"),
        LimitName.FallByGravity => notation.Text("Fall from vessel to vessel"),
        LimitName.Evaporation => notation.Text("Evaporation against the kettle's heat"),
        LimitName.PitchTemperature => notation.Text("Wort from the chiller"),
        LimitName.PitchInFermenter => notation.Text("Wort in the fermenter, for the yeast"),
        RefusalCode.NoMash => notation.Text("Grist for a mash"),
        RefusalCode.Circuits => notation.Text("Circuits in use"),
        RefusalCode.BatchVolume => notation.Text("Volume into the fermenter"),
        RefusalCode.RestBelowTheLast => notation.Text("A rest colder than the one before"),
        RefusalCode.NoCoil => notation.Text("Coil for the mash"),
        RefusalCode.TunCannotHeat => notation.Text("Second rest in a tun without heat"),
        _ when LimitName.LoadOf(code) is var (circuit, vessel) => notation.Text($"Load on circuit {circuit} by the {vessel.Replace('_', ' ')}"),
        _ when LimitName.StepOf(code) is { } step => notation.Text($"Temperature that {Step(step)} reaches"),
        _ => Names.Sentence(WaterWords.Limit(code, notation) ?? Names.Plainly(code)),
    };

    /// <summary>"Mash in the tun 33.4 L, at most 61.0 L: 27.6 L to spare".</summary>
    public static string Of(Limit limit, Notation notation, Brewhouse? house = null) =>
        $"{Name(limit.Name, notation, house)} {notation.Value(limit.Value, limit.Unit)}, {(limit.AtMost ? notation.Text("at most") : notation.Text("at least"))} {notation.Value(limit.Bound, limit.Unit)}: {Margin(limit, notation)} {Side(limit, notation)}";

    /// <summary>"27.6 L": to spare or beyond.</summary>
    public static string Margin(Limit limit, Notation notation) =>
        Difference(Math.Abs(limit.Margin), limit.Unit, notation, Math.Max(limit.Value, limit.Bound));

    /// <summary>"to spare: Mash in the tun".</summary>
    public static string AfterMargin(Limit limit, Notation notation, Brewhouse? house = null) => $"{Side(limit, notation)}: {Name(limit.Name, notation, house)}";

    private static string Side(Limit limit, Notation notation) => limit.Ok ? notation.Text("to spare") : notation.Text("beyond");

    /// <summary>The same on paper, where there is room for what a number of the pump means.</summary>
    public static string OnPlan(Limit limit, Plan plan, Notation notation) => limit.Name switch
    {
        _ when SharesItsCircuit(limit, plan) => notation.Text($"{Of(limit, notation, plan.Brewhouse)} (alone on it: with another one the breaker trips)"),
        LimitName.FalseBottomLoad => notation.Text($"{Of(limit, notation, plan.Brewhouse)} (should the bed stick with the pump full on; the same each day)"),
        LimitName.SuctionHead => notation.Text($"{Of(limit, notation, plan.Brewhouse)} (with less it draws vapour; throttle its outlet, never its inlet)"),
        _ => Of(limit, notation, plan.Brewhouse),
    };

    private static bool SharesItsCircuit(Limit limit, Plan plan) =>
        LimitName.LoadOf(limit.Name) is var (circuit, _) && plan.Limits.Count(l => LimitName.LoadOf(l.Name)?.Circuit == circuit) > 1;

    /// <summary>What the hands can do on the day about a limit that is going to break.</summary>
    public static string Do(Limit limit, Notation notation)
    {
        var much = Difference(Math.Abs(limit.Margin), limit.Unit, notation);
        return limit.Name switch
        {
            LimitName.LiquorInTank => notation.Text($"Draw {much} less into it."),
            LimitName.MashInTun or LimitName.MashInLauterTun => notation.Text($"Hold back {much} of water from the mash; it can go over the grain later."),
            LimitName.WortInKettle => notation.Text($"End the run-off {much} sooner, or put a ring on before it is that full."),
            LimitName.WortInWhirlpool => notation.Text($"Leave {much} in the kettle."),
            LimitName.WortInFermenter => notation.Text($"End the cast-out {much} sooner, or have a second vessel ready."),
            LimitName.MashCoversElements => notation.Text($"Leave the tun's heat off, or add {much} of water first."),
            LimitName.WortCoversElements => notation.Text($"Leave the kettle's heat off until {much} more is in it."),
            LimitName.DecoctionShare => notation.Text("Pull less and heat the rest of the way otherwise."),
            LimitName.DecoctionCoversElements => notation.Text($"Pull {much} more, or leave the kettle's heat off."),
            LimitName.StrikeTemperature => notation.Text("Warm the tun with hot water first, or use more strike liquor."),
            LimitName.FalseBottomLoad => notation.Text("Throttle the pump at its outlet."),
            LimitName.SuctionHead => notation.Text("Throttle the pump at its outlet, never at its inlet, or let the liquor cool."),
            LimitName.PitchTemperature => notation.Text("Run the wort slower or the water colder, or cool on in the fermenter before pitching."),
            LimitName.PitchInFermenter => notation.Text("Cool on in the fermenter before pitching: r."),
            _ when LimitName.LoadOf(limit.Name) is not null => notation.Text("Switch one of its heaters off."),
            _ when limit.AtMost => notation.Text("It gets no colder: cool on in the fermenter before pitching."),
            _ => notation.Text("It gets no hotter: look whether its heat is on and covered."),
        };
    }

    private static string Step(string id) => Names.Plainly(id[(id.LastIndexOf('.') + 1)..]);

    /// <param name="of">What it is a difference of: it gets no more decimals than that.</param>
    private static string Difference(double value, string unit, Notation notation, double of = 0) =>
        unit is "°C" ? notation.Kelvin(value)
        : unit is "kg" && of >= 100 ? notation.Load(value)
        : notation.Value(value, unit);
}
