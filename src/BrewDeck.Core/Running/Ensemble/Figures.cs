using System.Collections.Immutable;
using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Ensemble;

/// <summary>A figure of a folded day, and how it depends on the sources: worked out once a plan, for every look at the outlook asks for it.</summary>
internal sealed class DayFigure(Response response, Func<ImmutableArray<PlanStep>, double> of)
{
    private readonly double?[] _paces = new double?[response.Plan.Steps.Length];
    private Row? _row;

    public Row Row => _row ??= response.Row(of);

    /// <summary>What the pace of one person adds from a step of the plan to the end of the day.</summary>
    public double PacesFrom(int step) => _paces[step] ??= of(response.PacedFrom(step).Steps) - of(response.Plan.Steps);
}

/// <summary>The figures of the outlook.</summary>
internal sealed class Figures
{
    private readonly Response _response;
    private readonly DayFigure?[] _leftMs;

    public Figures(Response response)
    {
        _response = response;
        _leftMs = new DayFigure?[response.Plan.Steps.Length];
        PreBoilL = new(response, day => Contents.CoolL(Kettle(day, s => s.Kind.FillsKettle())));
        PreBoilGravitySg = new(response, day => Sg(Kettle(day, s => s.Kind.FillsKettle())));
        PostBoilL = new(response, day => Contents.CoolL(Kettle(day, s => s.Kind == StepKind.Boil)));
        FermenterL = new(response, day => Contents.CoolL(Fermenter(day)));
        OriginalGravitySg = new(response, day => Sg(Fermenter(day)));
        BitternessIbu = new(response, day => WortFigures.BitternessIbu(response.Setting, day[^1].After));
        ColourEbc = new(response, day => WortFigures.ColourEbc(response.Setting, day[^1].After));
        PitchC = new(response, day => Fermenter(day).TempC);
    }

    public DayFigure PreBoilL { get; }

    public DayFigure PreBoilGravitySg { get; }

    public DayFigure PostBoilL { get; }

    public DayFigure FermenterL { get; }

    public DayFigure OriginalGravitySg { get; }

    public DayFigure BitternessIbu { get; }

    public DayFigure ColourEbc { get; }

    public DayFigure PitchC { get; }

    /// <summary>From the start of a step of the plan to the end of the day, ms.</summary>
    public DayFigure LeftMs(int step) =>
        _leftMs[step] ??= new(_response, day => 1000 * (day.Max(s => s.EndS) - day[step].StartS));

    private VesselState Kettle(ImmutableArray<PlanStep> day, Func<StepSpec, bool> wanted) =>
        (day.LastOrDefault(s => wanted(s.Spec)) ?? day[^1]).After.Vessels[_response.Setting.IndexOf(_response.Setting.Brewhouse.Kettle.Id)];

    private VesselState Fermenter(ImmutableArray<PlanStep> day) => day[^1].After.Vessels[_response.Setting.FermenterIndex];

    private static double Sg(in VesselState v) => SugarSolution.SgFromPlato(v.Plato);
}
