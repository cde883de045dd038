using System.CommandLine;
using BrewDeck.Deck.Wording;
using BrewDeck.Logbook;

namespace BrewDeck.Commands;

/// <summary>The commands under <c>brewdeck log</c>.</summary>
internal static class LogCommandTable
{
    private static readonly Argument<int> Batch = new("batch") { Description = "Number of the batch, see \"log list\"." };

    public static Command Of(Func<ParseResult, Workplace> place, Option<UnitSystem> units)
    {
        var log = new Command("log", "Reads the logbook, checks it, moves it.");
        void Add(Command command, Func<ParseResult, LogCommands, int> run)
        {
            command.SetAction(p =>
            {
                var at = place(p);
                return at.Guard(() => run(p, at.LogCommands(p.GetValue(units))));
            });
            log.Subcommands.Add(command);
        }

        Reading(Add);
        Add(new("verify", "Checks every record of the logbook."), (_, c) => c.Verify());
        Add(new("repair", "Mends a damaged logbook from its second copies and says what it did."), (_, c) => c.Repair());
        return log;
    }

    private static void Reading(Action<Command, Func<ParseResult, LogCommands, int>> add)
    {
        var format = new Option<LogFormat>("--format") { Description = "text, json (JSON Lines) or csv.", DefaultValueFactory = _ => LogFormat.Text };
        var rehearsed = new Option<bool>("--rehearsed") { Description = "Rehearsed batches too." };
        var file = new Option<string?>("--out", "-o") { Description = "File to write; without it to the output.", HelpName = "FILE" };
        add(new("list", "Lists the batches, newest first.") { format, rehearsed }, (p, c) => c.List(p.GetValue(format), p.GetValue(rehearsed)));
        add(new("show", "Shows a batch's whole record.") { Batch }, (p, c) => c.Show(p.GetValue(Batch)));
        add(new("report", "Makes a batch's report: one HTML page to look at or print.") { Batch, file }, (p, c) => c.Report(p.GetValue(Batch), p.GetValue(file)));
        var exported = new Option<ExportFormat>("--format") { Description = "text, json (JSON Lines), csv, or beerjson: a recipe of what was really brewed.", DefaultValueFactory = _ => ExportFormat.Text };
        add(new("export", "Writes a batch out.") { Batch, exported, file }, (p, c) => p.GetValue(exported) == ExportFormat.BeerJson
            ? c.ExportRecipe(p.GetValue(Batch), p.GetValue(file))
            : c.Export(p.GetValue(Batch), (LogFormat)p.GetValue(exported), p.GetValue(file)));
    }
}

/// <summary>The formats of <see cref="LogFormat"/>, in its order, and a recipe.</summary>
internal enum ExportFormat
{
    Text = LogFormat.Text,
    Json = LogFormat.Json,
    Csv = LogFormat.Csv,
    BeerJson,
}
