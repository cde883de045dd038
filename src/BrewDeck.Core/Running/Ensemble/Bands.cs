using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Ensemble;

/// <summary>A middle and its 80 % band, against what the mean member gives.</summary>
/// <param name="Later">Shift of all members that is in the three.</param>
internal readonly record struct Band(double P10, double P50, double P90, double Later = 0)
{
    public Figure Around(double mean) => new(mean + P50, mean + P10, mean + P90);
}

/// <summary>The bands of the outlook.</summary>
internal sealed record Bands
{
    public required Band PreBoilL { get; init; }

    public required Band PreBoilGravitySg { get; init; }

    public required Band PostBoilL { get; init; }

    public required Band FermenterL { get; init; }

    public required Band OriginalGravitySg { get; init; }

    public required Band BitternessIbu { get; init; }

    public required Band ColourEbc { get; init; }

    public required Band PitchC { get; init; }

    public required Band FinishMs { get; init; }

    /// <param name="stepId">The step last begun; empty: the day is over.</param>
    public static Bands Of(Belief belief, string stepId)
    {
        var figures = new Figures(belief.Response);
        Band Of(Row row, double later = 0) => Quantiles(belief, row, later);
        var begun = belief.Response.IndexOf(stepId);
        return new()
        {
            PreBoilL = Of(figures.PreBoilL),
            PreBoilGravitySg = Of(figures.PreBoilGravitySg),
            PostBoilL = Of(figures.PostBoilL),
            FermenterL = Of(figures.FermenterL),
            OriginalGravitySg = Of(figures.OriginalGravitySg),
            BitternessIbu = Of(figures.BitternessIbu),
            ColourEbc = Of(figures.ColourEbc),
            PitchC = Of(figures.PitchC),
            FinishMs = begun < 0 ? default : Of(figures.LeftMs(begun), 1000 * (belief.Response.Paced[^1] - belief.Response.Paced[begun])),
        };
    }

    private static Band Quantiles(Belief belief, Row row, double later)
    {
        Span<float> values = stackalloc float[Members.Count];
        belief.Away(row, values);
        values.Sort();
        double At(Span<float> sorted, double share) => sorted[(int)(share * (Members.Count - 1))] + later;
        return new(At(values, 0.1), At(values, 0.5), At(values, 0.9), later);
    }
}

/// <summary>The figures of the outlook as they depend on the sources.</summary>
internal sealed class Figures(Response response)
{
    private readonly PlantSetting _setting = response.Setting;

    public Row PreBoilL => Kettle(IsRunOff, v => Contents.CoolL(v));

    public Row PreBoilGravitySg => Kettle(IsRunOff, v => Sg(v));

    public Row PostBoilL => Kettle(s => s.Kind == StepKind.Boil, v => Contents.CoolL(v));

    public Row FermenterL => Fermenter(v => Contents.CoolL(v));

    public Row OriginalGravitySg => Fermenter(v => Sg(v));

    public Row PitchC => Fermenter(v => v.TempC);

    public Row BitternessIbu => response.Row(day => WortFigures.BitternessIbu(_setting, day[^1].After));

    public Row ColourEbc => response.Row(day => WortFigures.ColourEbc(_setting, day[^1].After));

    /// <summary>From the start of a step to the end of the day, ms.</summary>
    public Row LeftMs(int step) => response.Row(day => 1000 * (day.Max(s => s.EndS) - day[step].StartS));

    private static bool IsRunOff(StepSpec spec) => spec.Kind is StepKind.Lauter or StepKind.RunOff;

    private Row Kettle(Func<StepSpec, bool> wanted, Func<VesselState, double> of)
    {
        var kettle = _setting.IndexOf(_setting.Brewhouse.Kettle.Id);
        return response.Row(day => of((day.LastOrDefault(s => wanted(s.Spec)) ?? day[^1]).After.Vessels[kettle]));
    }

    private Row Fermenter(Func<VesselState, double> of) => response.Row(day => of(day[^1].After.Vessels[_setting.FermenterIndex]));

    private static double Sg(in VesselState v) => SugarSolution.SgFromPlato(v.Plato);
}
