using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;

namespace BrewDeck.Deck.Wording;

/// <summary>What the plan was held against.</summary>
public static class LimitWords
{
    /// <param name="code">A limit's or a refusal's stable name.</param>
    /// <param name="house">Null: with tank and tun; of a single vessel only the kettle is there.</param>
    public static string Name(string code, Notation notation, Brewhouse? house = null) => code switch
    {
        "strike_liquor_in_tank" when house is { Vessels.Length: 1 } => notation.Text("Strike liquor in the kettle"),
        "mash_in_tun" when house is { Vessels.Length: 1 } => notation.Text("Mash in the kettle"),
        "mash_covers_elements" when house is { Vessels.Length: 1 } => notation.Text("Mash over the kettle's elements"),
        "strike_liquor_in_tank" => notation.Text("Strike liquor in the tank"),
        "liquor_in_tank" => notation.Text("Liquor in the tank"),
        "sparge_liquor_in_tank" => notation.Text("Sparge liquor in the tank"),
        "strike_temperature" => notation.Text("Temperature of the strike liquor"),
        "sparge_volume" => notation.Text("Sparge liquor left to use"),
        "mash_in_tun" => notation.Text("Mash in the tun"),
        "mash_in_lauter_tun" => notation.Text("Mash in the lauter tun"),
        "wort_in_whirlpool" => notation.Text("Wort in the whirlpool"),
        "mash_covers_elements" => notation.Text("Mash over the tun's elements"),
        "decoction_share" => notation.Text("Share of the mash that is boiled"),
        "decoction_covers_elements" => notation.Text("Decoction over the kettle's elements"),
        "wort_in_kettle" => notation.Text("Wort in the kettle"),
        "wort_covers_elements" => notation.Text("Wort over the kettle's elements"),
        "wort_in_fermenter" => notation.Text("Wort in the fermenter"),
        "false_bottom_load" => notation.Text("Load on the false bottom by suction"),
        "suction_head" => notation.Text("Suction head left to the pump"),
        "lift_of_pump" => notation.Text("Lift for the pump"),
        "fall_by_gravity" => notation.Text("Fall from vessel to vessel"),
        "evaporation" => notation.Text("Evaporation against the kettle's heat"),
        "pitch_temperature" => notation.Text("Wort from the chiller"),
        LiveLimits.InFermenter => notation.Text("Wort in the fermenter, for the yeast"),
        "no_mash" => notation.Text("Grist for a mash"),
        "circuits" => notation.Text("Circuits in use"),
        "batch_volume" => notation.Text("Volume into the fermenter"),
        "rest_below_the_last" => notation.Text("A rest colder than the one before"),
        "tun_cannot_heat" => notation.Text("Second rest in a tun without heat"),
        _ when code.StartsWith("circuit_", StringComparison.Ordinal) && code.Split('_') is [_, var circuit, "for", .. var vessel] =>
            notation.Text($"Load on circuit {circuit} by the {string.Join(' ', vessel)}"),
        _ when code.StartsWith("heats_to_target:", StringComparison.Ordinal) || code.StartsWith("chills_to_target:", StringComparison.Ordinal) =>
            notation.Text($"Temperature that {Step(code)} reaches"),
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
        "false_bottom_load" => notation.Text($"{Of(limit, notation, plan.Brewhouse)} (should the bed stick with the pump full on; the same each day)"),
        "suction_head" => notation.Text($"{Of(limit, notation, plan.Brewhouse)} (with less it draws vapour; throttle its outlet, never its inlet)"),
        _ => Of(limit, notation, plan.Brewhouse),
    };

    private static bool SharesItsCircuit(Limit limit, Plan plan) => limit.Name.Split("_for_") is [var circuit, _]
        && circuit.StartsWith("circuit_", StringComparison.Ordinal)
        && plan.Limits.Count(l => l.Name.StartsWith(circuit + "_for_", StringComparison.Ordinal)) > 1;

    /// <summary>What the hands can do on the day about a limit that is going to break.</summary>
    public static string Do(Limit limit, Notation notation)
    {
        var much = Difference(Math.Abs(limit.Margin), limit.Unit, notation);
        return limit.Name switch
        {
            "liquor_in_tank" => notation.Text($"Draw {much} less into it."),
            "mash_in_tun" or "mash_in_lauter_tun" => notation.Text($"Hold back {much} of water from the mash; it can go over the grain later."),
            "wort_in_kettle" => notation.Text($"End the run-off {much} sooner, or put a ring on before it is that full."),
            "wort_in_whirlpool" => notation.Text($"Leave {much} in the kettle."),
            "wort_in_fermenter" => notation.Text($"End the cast-out {much} sooner, or have a second vessel ready."),
            "mash_covers_elements" => notation.Text($"Leave the tun's heat off, or add {much} of water first."),
            "wort_covers_elements" => notation.Text($"Leave the kettle's heat off until {much} more is in it."),
            "decoction_share" => notation.Text("Pull less and heat the rest of the way otherwise."),
            "decoction_covers_elements" => notation.Text($"Pull {much} more, or leave the kettle's heat off."),
            "strike_temperature" => notation.Text("Warm the tun with hot water first, or use more strike liquor."),
            "false_bottom_load" => notation.Text("Throttle the pump at its outlet."),
            "suction_head" => notation.Text("Throttle the pump at its outlet, never at its inlet, or let the liquor cool."),
            "pitch_temperature" => notation.Text("Run the wort slower or the water colder, or cool on in the fermenter before pitching."),
            LiveLimits.InFermenter => notation.Text("Cool on in the fermenter before pitching: r."),
            _ when limit.Name.StartsWith("circuit_", StringComparison.Ordinal) => notation.Text("Switch one of its heaters off."),
            _ when limit.AtMost => notation.Text("It gets no colder: cool on in the fermenter before pitching."),
            _ => notation.Text("It gets no hotter: look whether its heat is on and covered."),
        };
    }

    private static string Step(string code) => Names.Plainly(code[(code.LastIndexOfAny([':', '.']) + 1)..]);

    /// <param name="of">What it is a difference of: it gets no more decimals than that.</param>
    private static string Difference(double value, string unit, Notation notation, double of = 0) =>
        unit is "°C" ? notation.Kelvin(value)
        : unit is "kg" && of >= 100 ? notation.Load(value)
        : notation.Value(value, unit);
}
