using System.Collections.Immutable;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Simulator.Hands;
using BrewDeck.Simulator.Plant;

namespace BrewDeck.Simulator.Mishaps;

/// <summary>A mishap at work: when it begins, what it does to the plant, when it could be seen, and what the hands did about it.</summary>
public abstract class LiveMishap(Mishap mishap, VirtualPlant plant)
{
    private double _stepS = double.NaN;

    public Mishap Mishap { get; } = mishap;

    /// <summary>Vessel or circuit that it is about.</summary>
    public string About { get; protected set; } = "";

    /// <summary>Seconds since the start of the plant's day; null: not yet. The same for the two below.</summary>
    public double? BeganS { get; private set; }

    public double? SeenS { get; private set; }

    public double? ActedS { get; private set; }

    /// <summary>The first that was done; null: nothing.</summary>
    public Answer? Answer { get; private set; }

    /// <summary>It shows itself and waits for an answer.</summary>
    public bool Asks { get; private set; }

    /// <summary>How often it has asked.</summary>
    public int Asked { get; private set; }

    /// <summary>It has come to what the first sign only threatened.</summary>
    public virtual bool Worse => false;

    /// <summary>What hands can do about it now, what a practised brewer would do first; empty: only the run sheet's remedies help.</summary>
    public virtual ImmutableArray<HandAct> Acts => [];

    /// <summary>Every answer that is worth trying, the practised brewer's first.</summary>
    public virtual ImmutableArray<Answer> Answers => [.. Acts.Select(Core.Rehearsing.Answer.Of), Core.Rehearsing.Answer.Leave];

    /// <summary>For how much longer the hands are at it, s; 0: they are not.</summary>
    public double LeftS => NowS < DoneS ? DoneS - NowS : 0;

    protected VirtualPlant Plant => plant;

    /// <summary>When what the hands do about it is done, seconds since the start of the plant's day; NaN: nothing that takes time.</summary>
    protected double DoneS { get; set; } = double.NaN;

    protected double NowS => plant.NowS;

    /// <summary>A step begins, before the hands have done anything for it.</summary>
    internal void Starting(Order order)
    {
        if (BeganS is null && double.IsNaN(_stepS) && order.Id == Mishap.StepId)
        {
            _stepS = NowS;
            Placed(order);
        }
        Passing(order);
    }

    internal virtual void Finished(string stepId)
    {
    }

    /// <summary>That it was finished has been taken back.</summary>
    internal virtual void GoesOn(string stepId)
    {
    }

    internal virtual void Held(string stepId)
    {
    }

    /// <summary>A piece of time has passed.</summary>
    internal void Watch(double seconds)
    {
        if (!double.IsNaN(_stepS))
            Watch(NowS - _stepS, seconds);
    }

    /// <returns>False: it is not for this mishap.</returns>
    internal bool Tended(HandAct act)
    {
        if (!Asks || (act != HandAct.LeaveIt && !Acts.Contains(act)))
            return false;
        Done(Core.Rehearsing.Answer.Of(act));
        if (act != HandAct.LeaveIt)
            Mend(act);
        return true;
    }

    internal virtual void Remedied(RemedyKind kind)
    {
    }

    internal virtual void Took(Reading reading)
    {
    }

    /// <summary>The step in which it begins has been started.</summary>
    protected virtual void Placed(Order order)
    {
    }

    /// <summary>Some step begins.</summary>
    protected virtual void Passing(Order order)
    {
    }

    /// <param name="sinceS">Seconds since the step in which it begins was started.</param>
    /// <param name="seconds">That have passed since the last look.</param>
    protected abstract void Watch(double sinceS, double seconds);

    protected virtual void Mend(HandAct act)
    {
    }

    protected void Begin() => BeganS ??= NowS;

    protected void Ask()
    {
        SeenS ??= NowS;
        (Asks, Asked) = (true, Asked + 1);
    }

    /// <summary>Too late to do anything about it.</summary>
    protected void Close() => Asks = false;

    protected void Done(Answer answer)
    {
        ActedS ??= NowS;
        Answer ??= answer;
        Asks = StaysOpen(answer);
    }

    /// <summary>It can still be seen, and met otherwise.</summary>
    protected virtual bool StaysOpen(Answer answer) => false;

    protected double By(double mild, double plain, double severe) => Mishap.Severity switch
    {
        Severity.Mild => mild,
        Severity.Severe => severe,
        _ => plain,
    };
}
