using System.Collections.Immutable;
using BrewDeck.Core.Physics;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.SetUp;

/// <summary>What the answers so far make: sizes, hours to heat, the batch that fits.</summary>
internal static class SetUpFindings
{
    private const double TapC = 12, SpargeC = 76, RoomC = 18;

    /// <summary>Vessels are heated about so full.</summary>
    private const double FullShare = 0.65;

    /// <param name="upTo">Place of the question that is open: what later ones ask is not told.</param>
    public static ImmutableArray<Line> Of(SetUpSheet sheet, int upTo, Notation notation)
    {
        var asked = sheet.Questions.Take(upTo).Select(q => q.Id).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. sheet.Vessels.Where(v => asked.Contains(v.Id + ".height")).Select(v => Line.Of(Vessel(sheet, v, asked, notation))),
            .. sheet.Circuits.Where(c => asked.Contains("amps." + c.Id))
                .Select(c => Line.Of(notation.Text($"Circuit {c.Id}: carries {notation.Power(c.ContinuousW)} for hours"))),
            .. asked.Contains("evaporation") && sheet.Complete ? Fits(sheet, notation) : [],
        ];
    }

    private static string Vessel(SetUpSheet sheet, SetUpVessel vessel, HashSet<string> asked, Notation notation)
    {
        var size = $"{Names.Sentence(notation.Name(vessel.Name))}: {notation.Volume(sheet.CapacityL(vessel.Id))}";
        if (!asked.Contains(vessel.Id + ".heat") || sheet.Heat(vessel.Id).Count == 0)
            return size;
        var litres = FullShare * sheet.CapacityL(vessel.Id);
        var seconds = Seconds(sheet, vessel.Id, litres);
        var time = double.IsFinite(seconds) ? Durations.Short(seconds) : notation.Text("never");
        return notation.Text($"{size}, heats {notation.Number(litres, "0")} L from {notation.Target(TapC)} to {notation.Target(SpargeC)} in {time}");
    }

    private static double Seconds(SetUpSheet sheet, string id, double litres)
    {
        var heat = HeatFlow.WaterHeatJ(litres * Water.DensityKgPerM3(20) / 1000, TapC, SpargeC) / (SpargeC - TapC);
        return HeatFlow.HeatingTimeS(
            heat + sheet.HeatCapacityJPerK(id), sheet.Number(id + ".loss", Dimension.HeatTransfer), RoomC, TapC, SpargeC, sheet.NetW(id));
    }

    private static IEnumerable<Line> Fits(SetUpSheet sheet, Notation notation)
    {
        var (fits, bound) = sheet.Fits;
        var full = bound is null ? notation.Text("the fermenter is full") : notation.Text($"the limit is {notation.Lowered(LimitWords.Name(bound.Name, notation))}");
        yield return fits > 0
            ? Line.Of(notation.Text($"Up to {notation.Volume(fits)} of a wort of 1.048 fit; {full}"), Tone.Strong)
            : Line.Of(notation.Text($"Nothing can be brewed like this: {full}"), Tone.Warning);
    }
}
