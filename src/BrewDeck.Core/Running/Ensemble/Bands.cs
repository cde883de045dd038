using System.Collections.Immutable;
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
        var (figures, response) = (new Figures(belief.Response), belief.Response);
        var begun = response.IndexOf(stepId);
        var boils = BoilsLeft(response, begun);
        Band Of(Func<ImmutableArray<PlanStep>, double> figure) => Quantiles(belief, response.Row(figure), boils == 0 ? 0 : boils * response.Paces(figure));
        return new()
        {
            PreBoilL = Quantiles(belief, response.Row(figures.PreBoilL), 0),
            PreBoilGravitySg = Quantiles(belief, response.Row(figures.PreBoilGravitySg), 0),
            PostBoilL = Of(figures.PostBoilL),
            FermenterL = Of(figures.FermenterL),
            OriginalGravitySg = Of(figures.OriginalGravitySg),
            BitternessIbu = Of(figures.BitternessIbu),
            ColourEbc = Of(figures.ColourEbc),
            PitchC = Of(figures.PitchC),
            FinishMs = begun < 0 ? default : Quantiles(belief, response.Row(Figures.LeftMs(begun)), 1000 * (response.Paced.LateS[^1] - response.Paced.LateS[begun])),
        };
    }

    /// <summary>Share of the pieces of the boil that are not over.</summary>
    private static double BoilsLeft(Response response, int begun)
    {
        if (begun < 0)
            return 0;
        bool Boils(PlanStep step) => step.Spec.Kind is StepKind.HotBreak or StepKind.Boil;
        return response.Plan.Steps.Skip(begun).Count(Boils) / (double)Math.Max(1, response.Plan.Steps.Count(Boils));
    }

    private static Band Quantiles(Belief belief, Row row, double later)
    {
        Span<float> values = stackalloc float[Members.Count];
        belief.Away(row, values);
        const int last = Members.Count - 1, low = last / 10, middle = last / 2, high = last * 9 / 10;
        double p50 = Ranked.At(values, middle);
        double p10 = Ranked.At(values[..middle], low), p90 = Ranked.At(values[middle..], high - middle);
        return new(p10 + later, p50 + later, p90 + later, later);
    }
}

/// <summary>The figures of the outlook, of a folded day.</summary>
internal sealed class Figures(Response response)
{
    private readonly PlantSetting _setting = response.Setting;

    public double PreBoilL(ImmutableArray<PlanStep> day) => Contents.CoolL(Kettle(day, s => s.Kind.FillsKettle()));

    public double PreBoilGravitySg(ImmutableArray<PlanStep> day) => Sg(Kettle(day, s => s.Kind.FillsKettle()));

    public double PostBoilL(ImmutableArray<PlanStep> day) => Contents.CoolL(Kettle(day, s => s.Kind == StepKind.Boil));

    public double FermenterL(ImmutableArray<PlanStep> day) => Contents.CoolL(Fermenter(day));

    public double OriginalGravitySg(ImmutableArray<PlanStep> day) => Sg(Fermenter(day));

    public double PitchC(ImmutableArray<PlanStep> day) => Fermenter(day).TempC;

    public double BitternessIbu(ImmutableArray<PlanStep> day) => WortFigures.BitternessIbu(_setting, day[^1].After);

    public double ColourEbc(ImmutableArray<PlanStep> day) => WortFigures.ColourEbc(_setting, day[^1].After);

    /// <summary>From the start of a step to the end of the day, ms.</summary>
    public static Func<ImmutableArray<PlanStep>, double> LeftMs(int step) => day => 1000 * (day.Max(s => s.EndS) - day[step].StartS);

    private VesselState Kettle(ImmutableArray<PlanStep> day, Func<StepSpec, bool> wanted) =>
        (day.LastOrDefault(s => wanted(s.Spec)) ?? day[^1]).After.Vessels[_setting.IndexOf(_setting.Brewhouse.Kettle.Id)];

    private VesselState Fermenter(ImmutableArray<PlanStep> day) => day[^1].After.Vessels[_setting.FermenterIndex];

    private static double Sg(in VesselState v) => SugarSolution.SgFromPlato(v.Plato);
}
