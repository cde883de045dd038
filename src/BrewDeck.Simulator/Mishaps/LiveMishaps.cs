using System.Collections.Immutable;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Simulator.Hands;
using BrewDeck.Simulator.Plant;

namespace BrewDeck.Simulator.Mishaps;

/// <summary>All mishaps of a rehearsed day.</summary>
public sealed class LiveMishaps
{
    private readonly ImmutableArray<LiveMishap> _all;

    private readonly PowerCut? _cut;

    /// <param name="mishaps">Each with the step that it begins in, see <see cref="MishapPlaces.Placed"/>; without one it never begins.</param>
    public LiveMishaps(IEnumerable<Mishap> mishaps, VirtualPlant plant)
    {
        _all = [.. mishaps.Select(m => Of(m, plant))];
        _cut = _all.OfType<PowerCut>().FirstOrDefault();
    }

    public IReadOnlyList<LiveMishap> All => _all;

    /// <summary>Those that show themselves and wait for an answer, the one that has waited longest first.</summary>
    public IEnumerable<LiveMishap> Asking => _all.Where(t => t.Asks && t is not PowerCut).OrderBy(t => t.SeenS);

    /// <summary>Questions asked so far: a change of it is worth a look.</summary>
    public int Asked
    {
        get
        {
            var sum = 0;
            foreach (var live in _all)
                sum += live.Asked;
            return sum;
        }
    }

    /// <summary>The laptop is off: nobody sees or does anything.</summary>
    public bool LaptopOff => _cut is { Off: true };

    /// <summary>When it comes back, seconds since the start of the plant's day; null: it has not gone off.</summary>
    public double? LaptopBackS => _cut?.BackS;

    internal void Starting(Order order)
    {
        foreach (var live in _all)
            live.Starting(order);
    }

    internal void Finished(string stepId)
    {
        foreach (var live in _all)
            live.Finished(stepId);
    }

    /// <summary>That it was finished has been taken back.</summary>
    internal void GoesOn(string stepId)
    {
        foreach (var live in _all)
            live.GoesOn(stepId);
    }

    internal void Held(string stepId)
    {
        foreach (var live in _all)
            live.Held(stepId);
    }

    internal void Watch(double seconds)
    {
        foreach (var live in _all)
            live.Watch(seconds);
    }

    /// <summary>What the record says of the brewer's answers.</summary>
    internal void Happened(RunEvent happened)
    {
        if (happened is not (AlarmRaised or AlarmCleared))
            _cut?.Resumed();
        foreach (var live in Asking.ToList())
        {
            switch (happened)
            {
                case HandsActed e when live.Tended(e.Act):
                    return;
                case RemedyChosen e:
                    live.Remedied(e.Remedy.Kind);
                    break;
                case ReadingTaken e:
                    live.Took(e.Reading);
                    break;
            }
        }
    }

    private static LiveMishap Of(Mishap mishap, VirtualPlant plant) => mishap.Kind switch
    {
        MishapKind.ColdStrike => new ColdStrike(mishap, plant),
        MishapKind.ThickMash => new ThickMash(mishap, plant),
        MishapKind.StuckBed => new StuckBed(mishap, plant),
        MishapKind.TrippedCircuit => new TrippedCircuit(mishap, plant),
        MishapKind.FailedElement => new FailedElement(mishap, plant),
        MishapKind.PumpLostPrime => new PumpLostPrime(mishap, plant),
        MishapKind.BoilOver => new BoilOver(mishap, plant),
        MishapKind.WrongWeighIn => new WrongWeighIn(mishap, plant),
        MishapKind.SlowChiller => new SlowChiller(mishap, plant),
        MishapKind.MisreadHydrometer => new MisreadHydrometer(mishap, plant),
        _ => new PowerCut(mishap, plant),
    };
}
