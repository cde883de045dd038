using System.Collections.Immutable;
using BrewDeck.Core.Fermenting;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Wording;

/// <summary>What is known of a batch after pitching, and what is still to do, in words.</summary>
public static class FermentWords
{
    /// <summary>The part of a batch's page; empty before pitching.</summary>
    public static IEnumerable<Line> Lines(FermentState state, Notation notation)
    {
        if (state.PitchedMs is not { } pitched)
            return [];
        return
        [
            Line.Of(""),
            Line.Of(notation.Text("After the day"), Tone.Strong),
            Pair(notation.Text("pitched"), notation.Date(pitched), ""),
            .. Figures(state, notation),
            .. Entries(state, notation).OrderBy(e => e.AtMs).ThenBy(e => e.Seq).Select(e => Pair(notation.Date(e.AtMs), e.Text, "")),
            .. DueDates.Of(state).Select(d => Pair(Day(d.DueMs, notation), Due(d, state, notation), notation.Text("due "))),
        ];
    }

    /// <summary>What it has come to and what is due, then what was written down, the newest first: a small page shows the beginning.</summary>
    public static IEnumerable<Line> Brief(FermentState state, Notation notation)
    {
        if (state.PitchedMs is not { } pitched)
            return [];
        return
        [
            Line.Of(notation.Text("After the day"), Tone.Strong),
            .. Figures(state, notation),
            .. DueDates.Of(state).Select(d => Pair(Day(d.DueMs, notation), Due(d, state, notation), notation.Text("due "))),
            .. Entries(state, notation).OrderByDescending(e => e.AtMs).ThenByDescending(e => e.Seq).Select(e => Pair(notation.Date(e.AtMs), e.Text, "")),
            Pair(notation.Text("pitched"), notation.Date(pitched), ""),
        ];
    }

    /// <summary>Final gravity, attenuation and alcohol with their 80 % bands.</summary>
    private static IEnumerable<Line> Figures(FermentState state, Notation notation)
    {
        var from = state.MeasuredOriginalSg is null ? notation.Text("planned, not measured")
            : state.ThinnedByL > 0 ? notation.Text($"measured, and {notation.Volume(state.ThinnedByL)} water since")
            : notation.Text("measured");
        yield return Pair(notation.Text("original gravity"), $"{notation.Gravity(state.OriginalSg)} ({from})", "");
        if (!state.Lots.IsEmpty)
            yield return Pair(notation.Text("packaged"), notation.Text($"{notation.Volume(state.PackagedL)} of {notation.Volume(state.PitchedL)}"), "");
        if (FermentFigures.Of(state) is not { } figures)
            yield break;
        var label = figures.Steady ? notation.Text("final gravity") : notation.Text("gravity now");
        yield return Pair(label, Banded(figures.GravitySg, 1, "0.000", "", notation), "");
        yield return Pair(notation.Text("apparent attenuation"), Banded(figures.AttenuationFraction, 100, "0", " %", notation), "");
        yield return Pair(notation.Text("alcohol by volume"), Banded(figures.AbvPercent, 1, "0.0", " %", notation), "");
    }

    public static string Due(DueItem item, FermentState state, Notation notation) => item.Kind switch
    {
        DueKind.GravityCheck => notation.Text("gravity"),
        DueKind.Packaging => notation.Text("packaging"),
        _ => With(notation.Text($"add {item.Name}"), state.Recipe?.Hops.FirstOrDefault(h => h.Name == item.Name && h.Use == Core.Recipes.HopUse.DryHop) is { } hop
            ? notation.Grams(hop.MassG)
            : ""),
    };

    public static string Of(FermenterReading reading, Notation notation) => reading.Figure switch
    {
        FermenterFigure.Gravity => reading.Brix is { } bx
            ? notation.Text($"gravity {notation.Gravity(reading.Value)} (refractometer {notation.Number(bx, "0.0")} °Bx, alcohol corrected)")
            : notation.Text($"gravity {notation.Gravity(reading.Value)}"),
        FermenterFigure.Temperature => notation.Text($"fermenter {notation.Temp(reading.Value)}"),
        _ => "pH " + notation.Number(reading.Value, "0.00"),
    };

    public static string Of(DatedAddition addition, Notation notation) => notation.Text($"added {notation.Number(addition.Amount, "0.##")} {notation.Name(addition.Unit)} {addition.Name}");

    public static string Of(Packaging packaging, Notation notation) => packaging.Kind == PackageKind.Bottles
        ? notation.Text($"bottled {notation.Volume(packaging.VolumeL)} for {notation.Number(packaging.Co2Volumes, "0.0")} volumes: {notation.Grams(packaging.SugarG ?? 0)} {Sugar(packaging.Sugar, notation)}, warmest {notation.Temp(packaging.TempC)}")
        : notation.Text($"into keg {notation.Volume(packaging.VolumeL)} for {notation.Number(packaging.Co2Volumes, "0.0")} volumes: {Pressure(packaging.PressurePa ?? 0, notation)} gauge at {notation.Temp(packaging.TempC)}");

    public static string RestIsLees(Notation notation) => notation.Text("packaging done: the rest is lees");

    public static string Taste(string text, int? rating, Notation notation) => rating is { } alone && text.Length == 0 ? notation.Text($"tasted, {alone} of 5")
        : rating is { } stars ? notation.Text($"tasted, {stars} of 5: {text}") : notation.Text($"tasted: {text}");

    /// <summary>Two sold forms of one sugar: what a bag of priming sugar holds is told by its water.</summary>
    public static string Sugar(PrimingSugar? sugar, Notation notation) => sugar switch
    {
        PrimingSugar.TableSugar => notation.Text("table sugar"),
        PrimingSugar.Dextrose => notation.Text("dextrose, the usual one (monohydrate)"),
        PrimingSugar.Glucose => notation.Text("dextrose without water (anhydrous)"),
        _ => notation.Text("sugar"),
    };

    /// <summary>Local date.</summary>
    public static string Day(long ms, Notation notation) => notation.Date(ms)[..10];

    private static IEnumerable<(int Seq, long AtMs, string Text)> Entries(FermentState state, Notation notation) =>
    [
        .. state.Readings.Select(r => (r.Seq, r.AtMs, Of(r.Reading, notation))),
        .. state.Additions.Select(a => (a.Seq, a.AtMs, Of(a.Addition, notation))),
        .. state.Tastings.Select(t => (t.Seq, t.AtMs, Taste(t.Text, t.Rating, notation))),
        .. state.Lots.Select(l => (l.Seq, l.AtMs, Of(l.How, notation))),
        .. state.RestIsLees is { } end ? [(end.Seq, end.AtMs, RestIsLees(notation))] : ImmutableArray<(int, long, string)>.Empty,
    ];

    internal static string Pressure(double pa, Notation notation) => notation.Units == UnitSystem.Us
        ? notation.Number(pa / 6894.757, "0.0") + " psi"
        : notation.Number(pa / 1e5, "0.00") + " bar";

    private static string Banded(Figure figure, double times, string format, string unit, Notation notation)
    {
        var value = notation.Number(times * figure.P50, format) + unit;
        return figure is { P10: { } low, P90: { } high }
            ? $"{value} ({notation.Number(times * low, format)}..{notation.Number(times * high, format)})"
            : value;
    }

    private static Line Pair(string label, string value, string before) => new([new Span($"  {before}{label}  ", Tone.Muted), new Span(value)]);

    private static string With(string text, string more) => more.Length == 0 ? text : $"{text}, {more}";
}
