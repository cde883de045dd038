using BrewDeck.Deck.Trends;

namespace BrewDeck.Deck.Wording;

/// <summary>The followed figures and their control chart in words.</summary>
public static class TrendWords
{
    private const int MostNamed = 5;

    public static string Name(TrendFigure figure, Notation notation) => figure.Name switch
    {
        "efficiency_percent" => notation.Text("Brewhouse efficiency, %"),
        "gravity_off_points" => notation.Text("Gravity against plan, points"),
        "evaporation_kg_per_h" => notation.Text($"Evaporation, {notation.RateUnit(Unit(figure))}"),
        "heat_up_kw" => notation.Text("Heat-up of the strike liquor, kW"),
        "runoff_l_per_min" => notation.Text($"Run-off, {notation.RateUnit(Unit(figure))}"),
        "attenuation_percent" => notation.Text("Attenuation, %"),
        "day_late_min" => notation.Text("Day longer than planned, min"),
        "hot_liquor_lost_min" => notation.Text("Lost on hot liquor, min"),
        "mash_lost_min" => notation.Text("Lost in the mash, min"),
        "lauter_lost_min" => notation.Text("Lost in the lauter, min"),
        "boil_lost_min" => notation.Text("Lost in the boil, min"),
        "cool_lost_min" => notation.Text("Lost in cooling, min"),
        var other => Names.Sentence(Names.Plainly(other)),
    };

    /// <summary>The batches that something special must have happened to; empty: none.</summary>
    public static string StandsOut(ControlChart chart, TrendFigure figure, Notation notation)
    {
        var outside = chart.Outside.TakeLast(MostNamed).Select(p => notation.Text($"batch {p.Batch} outside ({Say(p.Value, figure, notation)})"));
        var shifted = chart.Shifted.TakeLast(1).Select(p => notation.Text($"eight or more on one side up to batch {p.Batch}"));
        return string.Join(", ", outside.Concat(shifted).Concat(Biased(chart, figure, notation)));
    }

    /// <summary>The plan misses the same way each time: no single batch stands out, and yet something is to be learned.</summary>
    private static IEnumerable<string> Biased(ControlChart chart, TrendFigure figure, Notation notation) => !figure.AgainstPlan || !chart.IsOffNought
        ? []
        : [chart.Centre > 0 ? notation.Text($"on average {Say(chart.Centre, figure, notation)} above the plan (see the lessons)") : notation.Text($"on average {Say(-chart.Centre, figure, notation)} below the plan (see the lessons)")];

    public static string Say(double value, TrendFigure figure, Notation notation) => notation.Number(InUnit(value, figure, notation), figure.Format);

    /// <summary>As the figure's name says it, and as it is drawn.</summary>
    public static double InUnit(double value, TrendFigure figure, Notation notation) => notation.InRateUnit(value, Unit(figure));

    private static string Unit(TrendFigure figure) => figure.Name switch
    {
        "evaporation_kg_per_h" => "kg/h",
        "runoff_l_per_min" => "L/min",
        _ => "",
    };

    /// <summary>Centre, limits and the last value; or that there are too few.</summary>
    public static string Sums(ControlChart? chart, double last, TrendFigure figure, Notation notation) => chart is null
        ? notation.Text($"last {Say(last, figure, notation)}; {ControlChart.Fewest} batches are needed for limits")
        : notation.Text($"centre {Say(chart.Centre, figure, notation)}, limits {Say(chart.Lower, figure, notation)} to {Say(chart.Upper, figure, notation)}, last {Say(last, figure, notation)}");
}
