using System.Diagnostics;
using BrewDeck.Benchmarks.Logbooks;
using BrewDeck.Core.Running;

namespace BrewDeck.Benchmarks.Speed;

/// <summary>
/// What a reading costs before the deck can show the new outlook: <c>recalculation [DAYS]</c>. Every reading of rehearsed days is taken from the state it
/// was taken in: the model of the day is moved to it, and the rest of the day is folded again.
/// </summary>
internal static class RecalculationSpeed
{
    private const int Repeats = 5;

    public static int Run(int days)
    {
        var (moved, folded, whole) = (new Samples("reading taken into the day"), new Samples("rest of the day folded"), new Samples("both"));
        for (var seed = 1; seed <= days + 1; seed++)
        {
            // the first day is what the compiler gets warm on
            Day(seed, seed == 1 ? (new(""), new(""), new("")) : (moved, folded, whole));
        }
        foreach (var samples in (Samples[])[moved, folded, whole])
            samples.Print();
        return 0;
    }

    private static void Day(int seed, (Samples Moved, Samples Folded, Samples Whole) into)
    {
        var events = RehearsedDays.Day(seed);
        for (var i = 1; i < events.Count; i++)
        {
            if (events[i] is not ReadingTaken reading)
                continue;
            var state = RunFold.Of([.. events.Take(i)]);
            for (var again = 0; again < Repeats; again++)
            {
                // a copy each time: of the same state it is remembered what was reckoned
                var before = state with { Live = state.Live! with { } };
                var start = Stopwatch.GetTimestamp();
                var after = RunFold.Then(before, reading);
                var taken = Stopwatch.GetTimestamp();
                _ = Forecasts.At(after, reading.AtMs).Outlook; // drawn when it is asked for
                var end = Stopwatch.GetTimestamp();
                into.Moved.Add(Stopwatch.GetElapsedTime(start, taken));
                into.Folded.Add(Stopwatch.GetElapsedTime(taken, end));
                into.Whole.Add(Stopwatch.GetElapsedTime(start, end));
            }
        }
    }
}
