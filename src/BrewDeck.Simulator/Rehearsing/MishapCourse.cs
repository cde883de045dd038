using System.Collections.Immutable;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;

namespace BrewDeck.Simulator.Rehearsing;

/// <summary>How a mishap went.</summary>
/// <param name="AtS">When it began, seconds since the start of the day; null: it had no place in this day.</param>
/// <param name="SeenS">When it could first be seen; null: never.</param>
/// <param name="ActedS">When something was first done about it; null: never.</param>
public sealed record MishapCourse(Mishap Mishap, double? AtS, double? SeenS, double? ActedS, Answer? Answer)
{
    internal static ImmutableArray<MishapCourse> Of(RehearsalPlayer player, RunState state)
    {
        double? At(double? plantS) => plantS is { } s ? state.SecondsAt(player.MsAt(s)) : null;
        return [.. player.LiveMishaps.All.Select(t => new MishapCourse(t.Mishap, At(t.BeganS), At(t.SeenS), At(t.ActedS), t.Answer))];
    }
}
