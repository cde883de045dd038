using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Ensemble;

/// <summary>
/// How a planned day answers to each source: the model folded over the run sheet, at the pace of one person, once as stated and twice for
/// each source, one standard deviation up and down. A run-off ends in one of two ways, at the mark or when the tun is dry, with a kink between them
/// that lies just where the plan is; so the day is folded for each of the two, and each member goes the way it would end first.
/// </summary>
internal sealed class Response
{
    private static readonly ConditionalWeakTable<Plan, Lazy<Response>> _known = [];

    /// <summary>Enough litres per kg that the tun never runs dry before the mark.</summary>
    private const double NeverDryLPerKg = -3;

    /// <summary>First as stated, then up and down for each source; for the run-off that ends at the mark, and for the dry one.</summary>
    private readonly ImmutableArray<PlanStep>[] _atMark;
    private readonly ImmutableArray<PlanStep>[] _dry;
    private readonly double[] _most;
    private readonly Pace _pace;
    private readonly StepSpec[] _specs;
    private readonly PacedDay?[] _paced;
    private readonly int _lastRunOff;

    private Response(Plan plan)
    {
        Plan = plan;
        Setting = PlantSetting.Of(plan.Brewhouse, plan.Choices);
        Sources = Ensemble.Sources.Of(plan);
        _most = [.. Sources.Select(s => s.Most)];
        _lastRunOff = LastRunOff(plan);
        _pace = new Pace(plan, Setting);
        (_atMark, _dry) = (new ImmutableArray<PlanStep>[1 + 2 * Sources.Length], new ImmutableArray<PlanStep>[1 + 2 * Sources.Length]);
        _specs = [.. plan.Steps.Select(s => s.Spec)];
        var begins = new PacedDay(plan, _pace);
        var stated = Fold(0, Setting, _specs, (begins, begins), 0);
        FoldSources(stated);
        _paced = new PacedDay?[plan.Steps.Length];
        Kept = Row(RunOffL);
        Figures = new(this);
    }

    public Plan Plan { get; }

    public PlantSetting Setting { get; }

    public ImmutableArray<Source> Sources { get; }

    /// <summary>The rest of the planned day, from a step that has begun, when one person does it.</summary>
    public PacedDay PacedFrom(int step) => _paced[step] ??= new PacedDay(Plan, _pace, step).Go(Plan.Steps.Skip(step).Select(s => s.Spec), Setting);

    /// <summary>Litres in the kettle at the end of the last run-off: the lesser of the two ends decides.</summary>
    public Row Kept { get; }

    /// <summary>The figures of the outlook.</summary>
    public Figures Figures { get; }

    /// <summary>The response of a plan, computed once for as long as the plan is in use; who asks meanwhile on another thread waits for it.</summary>
    public static Response Of(Plan plan) => _known.GetValue(plan, p => new(() => new Response(p))).Value;

    public static bool IsFolded(Plan plan) => _known.TryGetValue(plan, out var known) && known.IsValueCreated;

    /// <summary>How a quantity of the folded day depends on the sources.</summary>
    public Row Row(Func<ImmutableArray<PlanStep>, double> quantity) =>
        new(Quadratic.Of(_atMark, quantity, _most), Quadratic.Of(_dry, quantity, _most));

    /// <summary>Index of a step of the plan; -1: a remedy put it on the sheet.</summary>
    public int IndexOf(string stepId)
    {
        for (var i = 0; i < Plan.Steps.Length; i++)
        {
            if (Plan.Steps[i].Spec.Id == stepId)
                return i;
        }
        return -1;
    }

    private double RunOffL(ImmutableArray<PlanStep> day) =>
        _lastRunOff < 0 ? 0 : Contents.CoolL(day[_lastRunOff].After.Vessels[Setting.IndexOf(Setting.Brewhouse.Kettle.Id)]);

    private static int LastRunOff(Plan plan)
    {
        var last = -1;
        for (var i = 0; i < plan.Steps.Length; i++)
            last = plan.Steps[i].Spec is { Kind: StepKind.Lauter or StepKind.RunOff, VolumeL: not null } ? i : last;
        return last;
    }

    /// <summary>
    /// The first frame of an open day waits for this, so two processors share it. Each takes the next day that nobody has taken: the pool starts its
    /// second thread up to 23 ms late, and with half of the days set aside for it they waited.
    /// </summary>
    private void FoldSources((PacedDay AtMark, PacedDay Dry) stated)
    {
        var taken = 0;
        void FoldWhatIsLeft()
        {
            for (int at; (at = Interlocked.Increment(ref taken)) <= 2 * Sources.Length;)
            {
                var source = Sources[(at - 1) / 2];
                Fold(at, source, at % 2 == 1 ? source.Sd : -source.Sd, stated);
            }
        }
        var beside = Task.Run(FoldWhatIsLeft);
        FoldWhatIsLeft();
        beside.GetAwaiter().GetResult();
    }

    private void Fold(int at, Source source, double off, (PacedDay AtMark, PacedDay Dry) stated)
    {
        var setting = source.OnPlant?.Invoke(Setting, off) ?? Setting;
        var specs = source.OnStep is { } on ? [.. _specs.Select(s => on(s, off))] : _specs;
        // up to the first step that feels it the day is the stated one
        bool Feels(int i) => (source.OnPlant is not null && _specs[i].Unit >= source.From) || !ReferenceEquals(specs[i], _specs[i]);
        var same = 0;
        while (same < specs.Length && !Feels(same))
            same++;
        Fold(at, setting, specs, stated, same);
    }

    /// <param name="like">Whose first steps are the same.</param>
    /// <param name="same">How many.</param>
    private (PacedDay AtMark, PacedDay Dry) Fold(int at, PlantSetting setting, StepSpec[] specs, (PacedDay AtMark, PacedDay Dry) like, int same)
    {
        var (atMark, dry) = like;
        if (same > _lastRunOff)
        {
            var alike = ReferenceEquals(atMark, dry);
            atMark = atMark.After(same).Go(specs.Skip(same), setting);
            dry = alike ? atMark : dry.After(same).Go(specs.Skip(same), setting);
        }
        else
        {
            var (runOff, rest) = (specs[_lastRunOff], specs.Skip(_lastRunOff + 1));
            var wet = setting with { Habits = setting.Habits with { AbsorptionLPerKg = NeverDryLPerKg } };
            atMark = atMark.After(same).Go(specs[same.._lastRunOff], setting);
            dry = atMark.After(_lastRunOff).Go([runOff with { VolumeL = null }], setting).Go(rest, setting);
            atMark.Go([runOff], wet).Go(rest, setting);
        }
        (_atMark[at], _dry[at]) = (atMark.Steps, dry.Steps);
        return (atMark, dry);
    }
}

/// <summary>A quantity for either end of the run-off.</summary>
internal sealed record Row(Quadratic AtMark, Quadratic Dry)
{
    public static Row operator -(Row a, Row b) => new(a.AtMark - b.AtMark, a.Dry - b.Dry);
}

/// <summary>
/// A quantity as stated, with its slopes and bends in each source, per standard deviation and its square; a source goes no farther than its most.
/// </summary>
internal sealed record Quadratic(double AsStated, double[] Slope, double[] Bend, double[] Most)
{
    public static Quadratic Of(ImmutableArray<PlanStep>[] days, Func<ImmutableArray<PlanStep>, double> quantity, double[] most)
    {
        var stated = quantity(days[0]);
        double[] slope = new double[days.Length / 2], bend = new double[days.Length / 2];
        for (var j = 0; j < slope.Length; j++)
        {
            double up = quantity(days[1 + 2 * j]), down = quantity(days[2 + 2 * j]);
            (slope[j], bend[j]) = (0.5 * (up - down), 0.5 * (up + down) - stated);
        }
        return new(stated, slope, bend, most);
    }

    public double At(ReadOnlySpan<double> z)
    {
        var sum = AsStated;
        for (var j = 0; j < Slope.Length; j++)
        {
            var off = Math.Min(z[j], Most[j]);
            sum += (Slope[j] + Bend[j] * off) * off;
        }
        return sum;
    }

    public static Quadratic operator -(Quadratic a, Quadratic b) =>
        new(a.AsStated - b.AsStated, [.. a.Slope.Zip(b.Slope, (x, y) => x - y)], [.. a.Bend.Zip(b.Bend, (x, y) => x - y)], a.Most);
}
