using BrewDeck.Commands;
using BrewDeck.Core.Running;
using BrewDeck.Logbook;
using BrewDeck.SystemTests.Logbook;

namespace BrewDeck.SystemTests.Reports;

/// <summary>A logbook with one rehearsed day in it, written by the program itself.</summary>
public sealed class RehearsedLogbook : IDisposable
{
    private readonly TempFolder _folder = new();

    public RehearsedLogbook()
    {
        var (code, _, errors) = Run("rehearse", "--headless", "--log", "--seed", "1", "--brewer", "the tester");
        Assert.True(code == 0, errors);
    }

    public string Path => _folder.At("logbook");

    /// <summary>Runs the program on this logbook.</summary>
    public (int Code, string Output, string Errors) Run(params string[] args) => RunOn(Path, args);

    internal IReadOnlyList<RunEvent> Events() =>
        [.. TapeScan.Of(File.ReadAllBytes(System.IO.Path.Combine(Path, Tape.NameOf(1)))).Lines.Select(l => l.ToEvent())];

    public static (int Code, string Output, string Errors) RunOn(string logbook, params string[] args)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var errors = new StringWriter { NewLine = "\n" };
        var code = CommandTable.Root(TimeProvider.System, output, errors).Parse([.. args, "--logbook", logbook]).Invoke();
        return (code, output.ToString(), errors.ToString());
    }

    public void Dispose() => _folder.Dispose();
}

[CollectionDefinition(nameof(RehearsedLogbook))]
public sealed class RehearsedLogbookTests : ICollectionFixture<RehearsedLogbook>;
