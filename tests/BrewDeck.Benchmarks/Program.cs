using BenchmarkDotNet.Running;
using BrewDeck.Benchmarks.Logbooks;
using BrewDeck.Benchmarks.Speed;

switch (args)
{
    case ["logbook", ..]:
        return LogbookScale.Run(args[1..]);
    case ["append", var folder, .. var rounds]:
        return AppendSpeed.Run(folder, rounds.Length > 0 ? int.Parse(rounds[0]) : 10);
    case ["recalculation", .. var days]:
        return RecalculationSpeed.Run(days.Length > 0 ? int.Parse(days[0]) : 10);
}
BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
return 0;
