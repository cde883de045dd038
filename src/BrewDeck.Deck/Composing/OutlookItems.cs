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
            Item(moment.Notation.Text("gravity"), o.OriginalGravitySg, moment.Notation.Gravity, Off(o.OriginalGravitySg, t.OriginalGravitySg, 0.0025), moment.Notation),
            Item(moment.Notation.Text("into fermenter"), o.FermenterL, moment.Notation.Volume, Off(o.FermenterL, t.FermenterL, 0.03 * t.FermenterL), moment.Notation),
            Item(moment.Notation.Text("bitterness"), o.BitternessIbu, v => moment.Notation.Number(v, "0") + " IBU", Off(o.BitternessIbu, t.BitternessIbu, 0.1 * t.BitternessIbu), moment.Notation),
            Item(moment.Notation.Text("finish"), o.FinishMs, v => moment.Notation.Clock((long)v), Tone.Normal, moment.Notation),
        ];
    }

    private static OutlookItem Item(string label, Figure figure, Func<double, string> write, Tone tone, Notation notation)
    {
        var band = figure is { P10: { } low, P90: { } high } ? Band(write(low), write(high)) : "";
        return new OutlookItem(tone == Tone.Warning ? label + notation.Text(" off plan") : label, write(figure.P50), band, tone);
    }

    /// <summary>"39.4 .. 40.0 L": the unit once; nothing where both read alike, for then it is known.</summary>
    private static string Band(string low, string high) => low == high ? "" : $"{low.Split(' ')[0]} .. {high}";

    private static Tone Off(Figure figure, double planned, double bound) =>
        Math.Abs(figure.P50 - planned) > bound ? Tone.Warning : Tone.Normal;
}
