using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Readings;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>The rows of the day's choices for a brewhouse and a recipe.</summary>
internal static class DayRows
{
    public static ImmutableArray<DayRow> For(Brewhouse brewhouse, Recipe recipe, Notation notation, Typed reader, IProfiles profiles)
    {
        var typing = new DayTyping(reader, notation);
        var most = brewhouse.Circuits.Length;
        return
        [
            new DayRow.GoOn(),
            new DayRow.Typed(notation.Text("Into the fermenter"), c => notation.Volume(c.BatchL ?? brewhouse.UsualBatchL ?? recipe.BatchL), notation.Text("cold wort, such as 40 L"),
                typing.Quantity(ReadingKind.Volume, DayBounds.BatchL, (c, v) => c with { BatchL = v })),
            .. brewhouse.CanSparge ? [new DayRow.Turns(notation.Text("Sparge"), c => Names.Sparge(c.Sparge, notation), c => c with { Sparge = Turn(c.Sparge) })] : ImmutableArray<DayRow>.Empty,
            new DayRow.Turns(notation.Text("Circuits in use"), c => notation.Text($"{c.Circuits ?? most} of {most}"), c => c with { Circuits = (c.Circuits ?? most) % most + 1 })
            {
                Digit = (c, n) => n >= 1 && n <= most ? c with { Circuits = n } : null,
            },
            new DayRow.Typed(notation.Text("Source water"), c => notation.Temp(c.SourceWaterC), notation.Text("as it comes from the tap"), typing.Quantity(ReadingKind.Temperature, DayBounds.SourceWaterC, (c, v) => c with { SourceWaterC = v })),
            new DayRow.Typed(notation.Text("Room"), c => notation.Temp(c.AmbientC), notation.Text("where the brewhouse stands"), typing.Quantity(ReadingKind.Temperature, DayBounds.AmbientC, (c, v) => c with { AmbientC = v })),
            new DayRow.Typed(notation.Text("Grain"), c => notation.Temp(c.GrainC), notation.Text("in the sack"), typing.Quantity(ReadingKind.Temperature, DayBounds.GrainC, (c, v) => c with { GrainC = v })),
            new DayRow.Typed(notation.Text("Above the sea"), c => notation.Height(c.AltitudeM), notation.Text("such as 350 m or 1200 ft"), typing.Height),
            new DayRow.Typed(notation.Text("Start"), Start(notation), notation.Text("time of day such as 8:30; nothing: when you begin"), typing.Clock((c, t) => c with { Start = t, Finish = t is null ? c.Finish : null })),
            new DayRow.Typed(notation.Text("Finish by"), Finish(notation), notation.Text("time of day such as 17:00; nothing: no wish"), typing.Clock((c, t) => c with { Finish = t, Start = t is null ? c.Start : null })),
            .. recipe.Hops.Select(h => h.Name).Distinct().Select(n => Alpha(recipe.Hops.First(h => h.Name == n), typing, notation)),
            new DayRow.Turns(notation.Text("Bitterness by"), c => Names.Formula(c.Bitterness), c => c with { Bitterness = Turn(c.Bitterness) }),
            .. recipe.Grist.Select(g => g.Name).Distinct().Select(n => Grist(n, profiles, notation)),
            .. recipe.Hops.Select(h => h.Name).Distinct().Select(n => Hop(n, profiles, notation)),
            new DayRow.Turns(notation.Text("Matters most"), c => Names.Aim(c.MattersMost, notation), c => c with { MattersMost = Turn(c.MattersMost) }),
        ];
    }

    private static DayRow Alpha(HopAddition hop, DayTyping typing, Notation notation) => new DayRow.Typed(
        notation.Text($"Alpha acid of {hop.Name}"),
        c => c.MeasuredAlpha.TryGetValue(hop.Name, out var measured) ? notation.Number(measured * 100, "0.0") + notation.Text(" % measured") : notation.Number(hop.AlphaFraction * 100, "0.0") + " %",
        notation.Text("percent, as printed on the bag; nothing: as in the recipe"),
        typing.Percent((c, v) => c with { MeasuredAlpha = v is { } x ? c.MeasuredAlpha.SetItem(hop.Name, x) : c.MeasuredAlpha.Remove(hop.Name) }));

    private static DayRow Grist(string name, IProfiles profiles, Notation notation) => new DayRow.Typed(
        notation.Text($"Instead of {name}"),
        c => c.GristOnHand.TryGetValue(name, out var other) ? other.Name : notation.Text("as written"),
        notation.Text("a malt of the catalogue that gives as much extract; nothing: as in the recipe"),
        DayTyping.OnHand(profiles.GristOnHand, (c, other) => c with
        {
            GristOnHand = other is null ? c.GristOnHand.Remove(name) : c.GristOnHand.SetItem(name, other),
        }, notation));

    private static DayRow Hop(string name, IProfiles profiles, Notation notation) => new DayRow.Typed(
        notation.Text($"Instead of {name}"),
        c => c.HopsOnHand.TryGetValue(name, out var other) ? other.Name : notation.Text("as written"),
        notation.Text("a hop of the catalogue; bittering additions keep their alpha acid; nothing: as in the recipe"),
        DayTyping.OnHand(profiles.HopOnHand, (c, other) => c with
        {
            HopsOnHand = other is null ? c.HopsOnHand.Remove(name) : c.HopsOnHand.SetItem(name, other),
        }, notation));

    private static BitternessFormula Turn(BitternessFormula formula) =>
        formula == BitternessFormula.Tinseth ? BitternessFormula.Rager : BitternessFormula.Tinseth;

    private static MattersMost Turn(MattersMost what) => what switch
    {
        MattersMost.Gravity => MattersMost.Volume,
        MattersMost.Volume => MattersMost.Time,
        _ => MattersMost.Gravity,
    };

    private static Func<DayChoices, string> Start(Notation notation) => c => c.Start is { } at ? notation.Date(at.ToUnixTimeMilliseconds())
        : c.Finish is null ? notation.Text("when you begin") : notation.Text("as the finish asks");

    private static Func<DayChoices, string> Finish(Notation notation) =>
        c => c.Finish is { } at ? notation.Date(at.ToUnixTimeMilliseconds()) : notation.Text("no wish");

    private static SpargeMethod Turn(SpargeMethod method) => method switch
    {
        SpargeMethod.Fly => SpargeMethod.Batch,
        SpargeMethod.Batch => SpargeMethod.None,
        _ => SpargeMethod.Fly,
    };
}
