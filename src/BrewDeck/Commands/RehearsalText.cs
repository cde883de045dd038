using BrewDeck.Core.Planning;
using BrewDeck.Deck.Wording;
using BrewDeck.Simulator.Rehearsing;

namespace BrewDeck.Commands;

/// <summary>A rehearsed day in one line for people.</summary>
internal static class RehearsalText
{
    public static string Of(RehearsalResult result, Plan plan)
    {
        var (truth, totals, words) = (result.Truth, plan.Totals, Notation.Metric);
        return $"seed {result.Seed}: {result.Ended} after {Durations.Short(result.VirtualS)}, {result.Events} events; "
            + $"gravity {words.Value(truth.OriginalGravitySg, "SG")} (plan {words.Value(totals.OriginalGravitySg, "SG")}), "
            + $"fermenter {words.Value(truth.FermenterL, "L")} (plan {words.Value(totals.FermenterL, "L")}), "
            + $"bitterness {words.Number(truth.BitternessIbu, "0")} IBU (plan {words.Number(totals.BitternessIbu, "0")} IBU)";
    }
}
