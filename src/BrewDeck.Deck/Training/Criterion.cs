using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;

namespace BrewDeck.Deck.Training;

/// <summary>One thing that must hold for an exercise to be passed.</summary>
public abstract record Criterion
{
    private Criterion()
    {
    }

    public abstract bool Holds(RunState state, Debrief debrief);

    public sealed record Done(StepKind Kind) : Criterion
    {
        public override bool Holds(RunState state, Debrief debrief) => state.Steps.Any(s => s.Spec.Kind == Kind && s.Status == RunStatus.Complete);
    }

    public sealed record Readings(int Least) : Criterion
    {
        public override bool Holds(RunState state, Debrief debrief) => state.Readings.Length >= Least;
    }

    /// <summary>On average over its rests.</summary>
    public sealed record MashWithin(double Kelvin) : Criterion
    {
        public override bool Holds(RunState state, Debrief debrief) => debrief.Result.MashOffK <= Kelvin;
    }

    public sealed record GravityWithin(double Points) : Criterion
    {
        public override bool Holds(RunState state, Debrief debrief) =>
            debrief.Pitched && 1000 * Math.Abs(debrief.Result.OriginalGravitySg - debrief.Plan.OriginalGravitySg) <= Points;
    }

    public sealed record VolumeWithin(double Litres) : Criterion
    {
        public override bool Holds(RunState state, Debrief debrief) =>
            debrief.Pitched && Math.Abs(debrief.Result.FermenterL - debrief.Plan.FermenterL) <= Litres;
    }

    /// <summary>Something was done about a mishap within so many minutes of the moment when it could be seen, and neither just leaving it nor what may hurt someone.</summary>
    public sealed record Met(MishapKind Kind, double Minutes) : Criterion
    {
        public override bool Holds(RunState state, Debrief debrief) => debrief.Mishaps.Any(m => m.Mishap.Kind == Kind
            && m is { SeenS: { } seen, ActedS: { } acted } && acted - seen <= 60 * Minutes && m.Chosen?.Answer != Answer.Leave && m.Chosen is not { Safe: false });
    }

    public sealed record SpiltAtMost(double Litres) : Criterion
    {
        public override bool Holds(RunState state, Debrief debrief) => debrief.Result.SpiltL <= Litres;
    }
}

/// <param name="Holds">It was met.</param>
public sealed record Judged(Criterion Criterion, bool Holds);
