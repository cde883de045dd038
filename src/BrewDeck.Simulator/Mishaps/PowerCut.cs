using System.Collections.Immutable;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Simulator.Plant;

namespace BrewDeck.Simulator.Mishaps;

/// <summary>The laptop goes off for 4, 12 or 30 minutes: the plant goes on as it was left, and nobody is told anything.</summary>
internal sealed class PowerCut(Mishap mishap, VirtualPlant plant) : LiveMishap(mishap, plant)
{
    private const double CutAfterS = 300;

    /// <summary>When it is back, seconds since the start of the plant's day; null: it has not gone off.</summary>
    public double? BackS { get; private set; }

    public bool Off => BackS is { } back && NowS < back;

    public override ImmutableArray<Answer> Answers => [];

    /// <summary>Somebody is back at the keys.</summary>
    public void Resumed()
    {
        if (Asks)
            Done(default);
    }

    protected override void Watch(double sinceS, double seconds)
    {
        if (BeganS is null && sinceS >= CutAfterS)
        {
            Begin();
            BackS = NowS + 60 * By(4, 12, 30);
        }
        if (SeenS is null && NowS >= BackS)
            Ask();
    }
}
