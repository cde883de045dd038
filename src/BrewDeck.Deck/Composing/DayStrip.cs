using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Composing;

/// <summary>The day by unit procedure: as it went so far, then as it is expected.</summary>
public static class DayStrip
{
    public static (ImmutableArray<StripPart> Parts, double Now) Of(DeckMoment moment)
    {
        var spans = Spans(moment);
        if (spans.Count == 0)
            return ([], 0);
        var end = Math.Max(spans.Max(s => s.EndS), moment.NowS);
        var starts = Starts(spans);
        var length = Math.Max(1, end - starts[0].S);
        var parts = ImmutableArray.CreateBuilder<StripPart>();
        for (var i = 0; i < starts.Count; i++)
        {
            var until = i + 1 < starts.Count ? starts[i + 1].S : end;
            parts.Add(new StripPart(Names.Unit(starts[i].Unit, moment.Notation), Share(starts[i].S), Share(until)));
        }
        return (parts.ToImmutable(), Share(moment.NowS));

        double Share(double s) => Math.Clamp((s - starts[0].S) / length, 0, 1);
    }

    private sealed record Span(UnitProcedure Unit, double StartS, double EndS);

    // work by itself (heating liquor) does not make a part of its own: the hands are elsewhere
    private static List<Span> Spans(DeckMoment moment)
    {
        var spans = new List<Span>();
        var rest = moment.Rest.ToDictionary(s => s.Spec.Id);
        foreach (var run in moment.State.Steps.Where(s => !s.Spec.Background))
        {
            var ahead = rest.GetValueOrDefault(run.Spec.Id);
            var start = run.StartedMs is { } ms ? (ms - moment.DayStartMs) / 1000.0 : ahead?.StartS;
            var end = run.EndedMs is { } over ? (over - moment.DayStartMs) / 1000.0 : ahead?.EndS;
            if (start is { } from && end is { } to)
                spans.Add(new Span(run.Spec.Unit, from, Math.Max(from, to)));
        }
        return spans;
    }

    // A unit procedure lasts until the next one begins. What is done early for a later one (digging out the tun during the boil)
    // does not begin it.
    private static List<(UnitProcedure Unit, double S)> Starts(List<Span> spans)
    {
        var starts = new List<(UnitProcedure Unit, double S)>();
        foreach (var unit in spans.GroupBy(s => s.Unit).OrderBy(g => g.Key))
        {
            var before = starts.Count == 0 ? double.NegativeInfinity : starts[^1].S;
            starts.Add((unit.Key, unit.Select(s => s.StartS).Where(s => s >= before).DefaultIfEmpty(before).Min()));
        }
        return starts;
    }
}
