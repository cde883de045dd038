using System.Diagnostics;

namespace BrewDeck.Benchmarks.Logbooks;

/// <summary>Times an act: the first time, with all that is compiled and read for it, and again; on a busy machine look at the time of the processor.</summary>
internal static class Timing
{
    private const int Again = 9;

    public static T Print<T>(string store, string what, Func<T> act)
    {
        var first = Stopwatch.StartNew();
        var result = act();
        first.Stop();
        List<double> wall = [], busy = [];
        for (var i = 0; i < Again; i++)
        {
            var (watch, cpu) = (Stopwatch.StartNew(), Environment.CpuUsage.TotalTime);
            act();
            wall.Add(watch.Elapsed.TotalMilliseconds);
            busy.Add((Environment.CpuUsage.TotalTime - cpu).TotalMilliseconds);
        }

        Console.WriteLine($"| {store} | {what} | {first.Elapsed.TotalMilliseconds:0.0} | {Median(wall):0.0} | {Median(busy):0.0} |");
        return result;
    }

    private static double Median(List<double> values)
    {
        values.Sort();
        return values[Again / 2];
    }

    public static void PrintPeak(string store)
    {
        using var self = Process.GetCurrentProcess();
        Console.WriteLine($"| {store} | peak memory, MB | {self.PeakWorkingSet64 / 1e6:0} | | |");
    }

    public static void PrintSizes(string store, IEnumerable<string> files) =>
        Console.WriteLine($"| {store} | on disk, MB | {files.Sum(f => new FileInfo(f).Length) / 1e6:0} | | |");
}
