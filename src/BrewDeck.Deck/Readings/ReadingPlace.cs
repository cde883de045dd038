using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Composing;

namespace BrewDeck.Deck.Readings;

/// <summary>What may be read, and where.</summary>
/// <param name="Expected">What the plan expects there; null: nothing.</param>
public sealed record ReadingPlace(ReadingKind Kind, string Vessel, double? Expected = null)
{
    private const string Fermenter = "fermenter";

    /// <summary>What the current step expects first, then what runs by itself, then everything else.</summary>
    public static ImmutableArray<ReadingPlace> All(DeckMoment moment)
    {
        var places = new List<ReadingPlace>();
        PlanStep[] current = moment.Current is { } step ? [step] : [];
        foreach (var open in current.Concat(moment.Forecast.Rest.Where(moment.IsRunning)))
            places.AddRange(open.Expected.Select(e => new ReadingPlace(e.Kind, e.Vessel, e.Value)));
        if (moment.Current is { Spec.Vessel.Length: > 0 } at)
            places.Add(new ReadingPlace(ReadingKind.Temperature, at.Spec.Vessel));
        places.AddRange(Everywhere(moment));
        return [.. places.DistinctBy(p => (p.Kind, p.Vessel))];
    }

    private static IEnumerable<ReadingPlace> Everywhere(DeckMoment moment)
    {
        ReadingKind[] kinds = [ReadingKind.Temperature, ReadingKind.Volume, ReadingKind.Gravity, ReadingKind.Ph];
        foreach (var vessel in moment.Plan.Brewhouse.Vessels.Select(v => v.Id).Append(Fermenter))
        {
            foreach (var kind in kinds)
                yield return new ReadingPlace(kind, vessel);
        }
        yield return new ReadingPlace(ReadingKind.Temperature, "grain");
        yield return new ReadingPlace(ReadingKind.Weight, "grain");
        yield return new ReadingPlace(ReadingKind.Temperature, "source");
    }
}
