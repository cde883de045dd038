using System.Collections.Immutable;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Composing;

/// <summary>What the rest of the day will give; what has left the plan stands out.</summary>
public static class OutlookItems
{
    public static ImmutableArray<OutlookItem> Of(DeckMoment moment)
    {
        var o = moment.Forecast.Outlook;
        var t = moment.Plan.Totals;
        return
        [
            Item(moment.Notation.Text("gravity"), o.OriginalGravitySg, moment.Notation.Gravity, t.OriginalGravitySg, 0.0025, moment.Notation),
            Item(moment.Notation.Text("into fermenter"), o.FermenterL, moment.Notation.Volume, t.FermenterL, 0.03 * t.FermenterL, moment.Notation),
            Item(moment.Notation.Text("bitterness"), o.BitternessIbu, v => moment.Notation.Number(v, "0") + " IBU", t.BitternessIbu, 0.1 * t.BitternessIbu, moment.Notation),
            Finish(moment),
        ];
    }

    public static OutlookItem Finish(DeckMoment moment) =>
        new(moment.Notation.Text("finish"), moment.Notation.Clock((long)moment.Forecast.Outlook.FinishMs.P50), Band(moment.Forecast.Outlook.FinishMs, v => moment.Notation.Clock((long)v)), Tone.Normal);

    private static OutlookItem Item(string label, Figure figure, Func<double, string> write, double planned, double bound, Notation notation) =>
        Math.Abs(figure.P50 - planned) > bound
            ? new(notation.Text($"{label} off plan {write(planned)}:"), write(figure.P50), Band(figure, write), Tone.Warning)
            : new(label, write(figure.P50), Band(figure, write), Tone.Normal);

    private static string Band(Figure figure, Func<double, string> write) =>
        figure is { P10: { } low, P90: { } high } ? Band(write(low), write(high)) : "";

    /// <summary>"39.4 .. 40.0 L": the unit once; nothing where both read alike, for then it is known.</summary>
    private static string Band(string low, string high) => low == high ? "" : $"{low.Split(' ')[0]} .. {high}";
}
