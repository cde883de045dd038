using System.Collections.Immutable;

namespace BrewDeck.Core.Rehearsing;

/// <summary>What a rehearsed day really gave. Volumes are litres at 20 °C.</summary>
/// <param name="FinishS">End, seconds since the start of the day.</param>
/// <param name="MashOffK">How far the mash was off its rests, mean over their time.</param>
/// <param name="SpiltL">Wort that went over the rim.</param>
public sealed record DayResult(
    double OriginalGravitySg, double FermenterL, double BitternessIbu, double PitchC, double FinishS, double MashOffK, double SpiltL)
{
    /// <summary>The farthest that the mash was off its rests, K.</summary>
    public double MashWorstK { get; init; }

    /// <summary>When that was, seconds since the start of the day; null: it never was off, or nobody looked back that far.</summary>
    public double? MashWorstAtS { get; init; }
}

/// <summary>An answer to a mishap and the day that it gives when everything else is the same.</summary>
/// <param name="Loss">How far that day is off the plan, see <see cref="DayLoss"/>.</param>
/// <param name="Safe">See <see cref="Safety"/>: what may hurt someone is never the best, whatever it saves.</param>
public sealed record TriedAnswer(Answer Answer, DayResult Gives, double Loss, bool Safe);

/// <summary>One mishap looked back at. Times are seconds since the start of the day.</summary>
/// <param name="AtS">When it began; null: the day did not come to it. The same for the two below.</param>
/// <param name="SeenS">When it could first be seen.</param>
/// <param name="ActedS">When something was first done about it.</param>
/// <param name="Chosen">What was done, when it was done, the rest of the day brewed without remedies for later readings; null: nothing can be done about it.</param>
/// <param name="Tried">Each answer at once, the rest of the day brewed without remedies for later readings; safe ones first, of those the best first.</param>
public sealed record MishapDebrief(
    Mishap Mishap, double? AtS, double? SeenS, double? ActedS, TriedAnswer? Chosen, ImmutableArray<TriedAnswer> Tried)
{
    /// <summary>Below half a point two days are the same to a brewer.</summary>
    public const double Noticeable = 0.5;

    /// <summary>The best of the safe ones; null: nothing can be done about it.</summary>
    public TriedAnswer? Best => Tried.IsDefaultOrEmpty ? null : Tried.FirstOrDefault(t => t.Safe);

    /// <summary>Whether another answer comes out the same as the one that was given.</summary>
    public bool IsAsGood(TriedAnswer other) => Chosen is { Safe: true } chosen && other.Safe && Math.Abs(other.Loss - chosen.Loss) < Noticeable;

    /// <summary>What would have been noticeably better, or safe where the choice was not; null: nothing.</summary>
    public TriedAnswer? Better => Chosen is { } chosen && Best is { } best && (!chosen.Safe || chosen.Loss - best.Loss >= Noticeable) ? best : null;
}

/// <summary>A rehearsed day looked back at: plan against result, and each mishap.</summary>
/// <param name="Pitched">The wort came to its yeast.</param>
public sealed record Debrief(RehearsalCard Card, bool Pitched, DayResult Plan, DayResult Result, ImmutableArray<MishapDebrief> Mishaps);
