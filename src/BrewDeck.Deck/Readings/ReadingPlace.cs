using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Composing;

namespace BrewDeck.Deck.Readings;

/// <summary>What may be read, and where.</summary>
/// <param name="Expected">What the plan expects there; null: nothing.</param>
public sealed record ReadingPlace(ReadingKind Kind, string Vessel, double? Expected = null)
{
    /// <summary>What the step in hand expects first, then what runs beside it, then what has just ended, then everything else.</summary>
    public static ImmutableArray<ReadingPlace> All(DeckMoment moment)
    {
        var places = new List<ReadingPlace>();
        foreach (var step in InHand(moment))
            places.AddRange(Of(step, moment));
        if (moment.Current is { Spec.Vessel.Length: > 0 } at && HasAny(at.Spec.Vessel, moment))
            places.Add(new ReadingPlace(ReadingKind.Temperature, at.Spec.Vessel));
        places.AddRange(Everywhere(moment));
        return [.. places.DistinctBy(p => (p.Kind, p.Vessel))];
    }

    // what is due to be read once comes in turn: digits after a reading open the next one; a level that is watched stays first
    private static IEnumerable<ReadingPlace> Of(PlanStep step, DeckMoment moment)
    {
        var places = moment.ExpectedNow(step).Select(e => new ReadingPlace(e.Kind, e.Vessel, e.Value));
        if (moment.Focus.Act == FocusAct.Wait)
            return places;
        var unread = moment.Unread(step).Select(e => (e.Kind, e.Vessel)).ToHashSet();
        return places.OrderByDescending(p => unread.Contains((p.Kind, p.Vessel)));
    }

    // a step that waits to be started has nothing to be read yet: the one before it has
    private static IEnumerable<PlanStep> InHand(DeckMoment moment)
    {
        var current = moment.Current;
        if (current is not null && moment.IsRunning(current))
            yield return current;
        foreach (var step in moment.Rest.Where(moment.IsRunning).OrderBy(s => s.Spec.Background).ThenByDescending(s => moment.State.Step(s.Spec.Id)?.StartedMs))
            yield return step;
        if (moment.State.Steps.Where(s => s.EndedMs is not null).MaxBy(s => s.EndedMs) is { } ended && moment.Step(ended.Spec.Id) is { } last)
            yield return last;
        if (current is not null)
            yield return current;
    }

    // an empty vessel has a level, and nothing else
    private static bool HasAny(string vessel, DeckMoment moment) =>
        moment.State.Live?.Setting.IndexOf(vessel) is >= 0 and var index && moment.Forecast.Now.Vessels[index].LiquidKg > 0;

    private static bool HasWort(string vessel, DeckMoment moment) => moment.Forecast.Now.Vessels[moment.State.Live!.Setting.IndexOf(vessel)].Plato > 0;

    private static IEnumerable<ReadingPlace> Everywhere(DeckMoment moment)
    {
        foreach (var vessel in Vessels(moment))
        {
            var holds = HasAny(vessel, moment);
            if (holds)
                yield return new ReadingPlace(ReadingKind.Temperature, vessel);
            yield return new ReadingPlace(ReadingKind.Volume, vessel);
            if (holds && HasWort(vessel, moment))
                yield return new ReadingPlace(ReadingKind.Gravity, vessel);
            if (holds)
                yield return new ReadingPlace(ReadingKind.Ph, vessel);
        }
        yield return new ReadingPlace(ReadingKind.Temperature, Places.Grain);
        yield return new ReadingPlace(ReadingKind.Weight, Places.Grain);
        yield return new ReadingPlace(ReadingKind.Temperature, Places.Source);
        yield return new ReadingPlace(ReadingKind.Temperature, Places.Room);
    }

    /// <summary>Where the hands are first; nothing more is read in a vessel that is cleaned.</summary>
    private static IEnumerable<string> Vessels(DeckMoment moment)
    {
        var at = moment.Current?.Spec;
        return moment.Plan.Brewhouse.Vessels.Select(v => v.Id).Append(Places.Fermenter)
            .Where(v => !moment.IsCleaned(v))
            .OrderBy(v => v == at?.Vessel ? 0 : v == at?.To ? 1 : 2);
    }
}
