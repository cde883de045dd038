using BenchmarkDotNet.Running;
using BrewDeck.Benchmarks.Logbooks;

if (args is ["logbook", ..])
    return LogbookScale.Run(args[1..]);
BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
return 0;
