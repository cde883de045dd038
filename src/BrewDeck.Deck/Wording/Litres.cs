using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;

namespace BrewDeck.Deck.Wording;

/// <summary>Volumes as the brewer's scale shows them. Plans count at 20 °C; a sight glass does not.</summary>
internal static class Litres
{
    /// <summary>What the vessel that is filled will show, as it stands at its own temperature; null when nothing is filled.</summary>
    public static double? Shown(PlanStep step)
    {
        var filled = step.Spec.To.Length > 0 ? step.Spec.To : step.Spec.Vessel;
        var expected = step.Expected.FirstOrDefault(e => e.Kind == ReadingKind.Volume && e.Vessel == filled);
        return expected?.Value ?? step.VolumeL;
    }

    /// <summary>Water counted at 20 °C, as it measures hot.</summary>
    private static double? Hot(double? litresAt20, double celsius) =>
        litresAt20 * Water.DensityKgPerM3(20) / Water.DensityKgPerM3(Math.Clamp(celsius, 0, 100));

    /// <summary>Strike liquor that is moved, at the temperature it has in its tank.</summary>
    public static double? Moved(PlanStep step, Plan plan)
    {
        var index = plan.Brewhouse.Vessels.ToList().FindIndex(v => v.Id == step.Spec.Vessel);
        return index < 0 ? step.VolumeL : Hot(step.VolumeL, step.After.Vessels[index].TempC);
    }

    /// <summary>Sparge liquor at its temperature.</summary>
    public static double? Sparge(PlanStep step, Plan plan) => Sparge(step.Spec.SpargeL, plan);

    public static double? Sparge(double? litresAt20, Plan plan) => Hot(litresAt20, plan.Brewhouse.Habits.SpargeC);
}
