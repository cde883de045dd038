using System.Collections.Immutable;

namespace BrewDeck.Core.Running;

/// <summary>What moved between two forecasts, in figures that a brewer would notice.</summary>
public static class Shifts
{
    public static ImmutableArray<Shift> Between(Forecast before, Forecast after)
    {
        var moved = ImmutableArray.CreateBuilder<Shift>();
        void Add(string figure, Figure was, Figure now, double noticed)
        {
            if (Math.Abs(now.P50 - was.P50) >= noticed)
                moved.Add(new(figure, was.P50, now.P50) { Low = now.P10, High = now.P90 });
        }

        var (a, b) = (before.Outlook, after.Outlook);
        Add("pre_boil_l", a.PreBoilL, b.PreBoilL, 0.1);
        Add("pre_boil_gravity_sg", a.PreBoilGravitySg, b.PreBoilGravitySg, 0.0005);
        Add("post_boil_l", a.PostBoilL, b.PostBoilL, 0.1);
        Add("fermenter_l", a.FermenterL, b.FermenterL, 0.1);
        Add("original_gravity_sg", a.OriginalGravitySg, b.OriginalGravitySg, 0.0005);
        Add("bitterness_ibu", a.BitternessIbu, b.BitternessIbu, 0.5);
        Add("colour_ebc", a.ColourEbc, b.ColourEbc, 0.5);
        Add("pitch_c", a.PitchC, b.PitchC, 0.2);
        Add("finish_ms", a.FinishMs, b.FinishMs, 60_000);
        AddTargets(before, after, Add);
        return moved.ToImmutable();
    }

    /// <summary>Targets that the plant's state decides, such as the strike temperature: named <c>target_c:STEP</c>.</summary>
    private static void AddTargets(Forecast before, Forecast after, Action<string, Figure, Figure, double> add)
    {
        foreach (var step in after.Rest)
        {
            var was = before.Step(step.Spec.Id);
            if (was is { TargetC: { } from } && step.TargetC is { } to)
                add($"target_c:{step.Spec.Id}", new(from), new(to), 0.1);
        }
    }
}
