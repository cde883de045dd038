using BrewDeck.Core.Brewhouses;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.SetUp;

/// <summary>What can be taken as usual or measured with water: heat that arrives, dead space, evaporation.</summary>
internal static class TrialQuestions
{
    public static void Ask(SetUpSheet sheet)
    {
        foreach (var vessel in sheet.Vessels)
        {
            sheet.Reckon(vessel.Id + ".loss", LineReaders.Kept(
                Typical.LossWPerK(sheet.DiameterM(vessel.Id), sheet.HeightM(vessel.Id), sheet["insulated"] == "yes"), "W/K"));
            if (sheet.Heat(vessel.Id).Count > 0)
                sheet.Ask(Net(sheet, vessel));
        }
        foreach (var vessel in sheet.Vessels)
            sheet.Ask(DeadSpace(sheet, vessel));
        sheet.Ask(Evaporation(sheet));
    }

    private static SetUpQuestion.Line Net(SetUpSheet sheet, SetUpVessel vessel)
    {
        (string Usual, Phrase Spread) heat = sheet.Heat(vessel.Id).Medium switch
        {
            HeatMedium.Gas => ("45 %", "30 to 60 % of a gas flame"),
            HeatMedium.Steam => ("95 %", "90 to 100 % of what a steam jacket is rated for"),
            _ => ("96 %", Typical.NetSpread),
        };
        return new(
            vessel.Id + ".net", $"How much of the {vessel.Called}'s heat arrives?",
            "Share of the watts that reaches the water. Take the usual for now, or time a heat-up of water.", heat.Usual,
            heat.Spread, "96 %", LineReaders.Quantity(Dimension.Fraction, "%", 30, 100, "96 %"),
            SetUpTrials.HeatUp(sheet, vessel));
    }

    private static SetUpQuestion.Line DeadSpace(SetUpSheet sheet, SetUpVessel vessel) => new(
        vessel.Id + ".dead", $"How much stays in the {vessel.Called} when it is drained?",
        "Below the outlet. Take the usual for now, or weigh water in and out.",
        LineReaders.Kept(Math.Round(Typical.DeadSpaceL(sheet.CapacityL(vessel.Id)), 1), "L"), Typical.DeadSpaceSpread, "1.2 L",
        LineReaders.Quantity(Dimension.Volume, "L", 0, Math.Max(1, 0.3 * sheet.CapacityL(vessel.Id)), "1.2 L"), SetUpTrials.DeadSpace(vessel));

    private static SetUpQuestion.Line Evaporation(SetUpSheet sheet) => new(
        "evaporation", "How much boils off in an hour?", "At a rolling boil, lid off. Take the usual for now, or time a boil of water.",
        LineReaders.Kept(Math.Round(Usual(sheet), 1), "kg/h"), EvaporationIs(sheet), "4.5 kg/h",
        LineReaders.Quantity(Dimension.Evaporation, "kg/h", 0.1, 500, "4.5 kg/h"), SetUpTrials.Boil(sheet));

    /// <summary>What to say of the evaporation that is offered.</summary>
    public static Phrase EvaporationIs(SetUpSheet sheet) => Typical.EvaporationIs(Usual(sheet), sheet.DiameterM("kettle"));

    private static double Usual(SetUpSheet sheet) => Math.Max(0.5, Typical.EvaporationKgPerH(
        sheet.DiameterM("kettle"), sheet.NetW("kettle"), sheet.Number("kettle.loss", Dimension.HeatTransfer)));
}
