using System.Collections.Immutable;

namespace BrewDeck.Core.Running;

/// <summary>What moved between two forecasts, in figures that a brewer would notice.</summary>
public static class Shifts
{
    public static ImmutableArray<Shift> Between(Forecast before, Forecast after)
    {
        var moved = ImmutableArray.CreateBuilder<Shift>();
        void Add(string figure, double was, double now, double noticed)
        {
            if (Math.Abs(now - was) >= noticed)
                moved.Add(new(figure, was, now));
        }

        var (a, b) = (before.Outlook, after.Outlook);
        Add("pre_boil_l", a.PreBoilL.P50, b.PreBoilL.P50, 0.1);
        Add("pre_boil_gravity_sg", a.PreBoilGravitySg.P50, b.PreBoilGravitySg.P50, 0.0005);
        Add("post_boil_l", a.PostBoilL.P50, b.PostBoilL.P50, 0.1);
        Add("fermenter_l", a.FermenterL.P50, b.FermenterL.P50, 0.1);
        Add("original_gravity_sg", a.OriginalGravitySg.P50, b.OriginalGravitySg.P50, 0.0005);
        Add("bitterness_ibu", a.BitternessIbu.P50, b.BitternessIbu.P50, 0.5);
        Add("colour_ebc", a.ColourEbc.P50, b.ColourEbc.P50, 0.5);
        Add("pitch_c", a.PitchC.P50, b.PitchC.P50, 0.2);
        Add("finish_ms", a.FinishMs.P50, b.FinishMs.P50, 60_000);
        AddTargets(before, after, Add);
        return moved.ToImmutable();
    }

    /// <summary>Targets that the plant's state decides, such as the strike temperature: named <c>target_c:STEP</c>.</summary>
    private static void AddTargets(Forecast before, Forecast after, Action<string, double, double, double> add)
    {
        foreach (var step in after.Rest)
        {
            var was = before.Rest.FirstOrDefault(s => s.Spec.Id == step.Spec.Id);
            if (was is { TargetC: { } from } && step.TargetC is { } to)
                add($"target_c:{step.Spec.Id}", from, to, 0.1);
        }
    }
}
