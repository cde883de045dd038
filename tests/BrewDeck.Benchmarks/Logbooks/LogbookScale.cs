using System.Diagnostics;

namespace BrewDeck.Benchmarks.Logbooks;

/// <summary>
/// A logbook of thousands of batches against the bounds of the record, and the same data in SQLite:
/// <c>logbook make FOLDER [BATCHES] [EVENTS]</c>, then <c>logbook measure FOLDER</c>, each store in a process of its own.
/// </summary>
internal static class LogbookScale
{
    public static int Run(string[] args)
    {
        switch (args)
        {
            case ["make", var folder, .. var sizes]:
                Make(folder, sizes.Length > 0 ? int.Parse(sizes[0]) : 2_000, sizes.Length > 1 ? int.Parse(sizes[1]) : 2_500);
                return 0;
            case ["measure", var folder]:
                Console.WriteLine("| store | what | first, ms | median of the next 9, ms | of the processor, ms |");
                Console.WriteLine("| --- | --- | ---: | ---: | ---: |");
                Child("brewdeck", folder);
                Child("sqlite", folder);
                Child("trends", folder);
                Child("deck", folder);
                Child("first-trends", folder);
                return 0;
            case ["measure-one", "brewdeck", var folder]:
                BrewDeckStore.Measure(folder);
                return 0;
            case ["measure-one", "sqlite", var folder]:
                SqliteStore.Measure(folder);
                return 0;
            case ["measure-one", "trends", var folder]:
                BrewDeckStore.MeasureTrends(folder);
                return 0;
            case ["measure-one", "deck", var folder]:
                BrewDeckStore.MeasureSession(folder);
                return 0;
            case ["measure-one", "first-trends", var folder]:
                BrewDeckStore.MeasureFirstTrends(folder);
                return 0;
            default:
                Console.Error.WriteLine("logbook make FOLDER [BATCHES] [EVENTS], or logbook measure FOLDER");
                return 2;
        }
    }

    private static void Make(string folder, int batches, int events)
    {
        Directory.CreateDirectory(folder);
        var took = Stopwatch.StartNew();
        using var logbook = new BrewDeckStore(folder);
        using var sqlite = new SqliteStore(folder);
        foreach (var day in RehearsedDays.Make(batches, events))
        {
            var number = logbook.Add(day);
            sqlite.Add(number, day);
            if (number % 100 == 0)
                Console.WriteLine($"{number} batches, {took.Elapsed.TotalSeconds:0} s");
        }
    }

    private static void Child(string store, string folder)
    {
        var start = new ProcessStartInfo(Environment.ProcessPath!) { UseShellExecute = false };
        foreach (var argument in (string[])["logbook", "measure-one", store, folder])
            start.ArgumentList.Add(argument);
        using var child = Process.Start(start)!;
        child.WaitForExit();
    }
}
