using System.CommandLine;
using BrewDeck.Deck.Wording;
using BrewDeck.Logbook;
using BrewDeck.Logbook.Moving;

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
        log.Subcommands.Add(Export(place, units));
        Moving(log, place);
        Add(new("verify", "Checks every record of the logbook."), (_, c) => c.Verify());
        Add(new("repair", "Mends a damaged logbook from its second copies and says what it did."), (_, c) => c.Repair());
        return log;
    }

    private static void Reading(Action<Command, Func<ParseResult, LogCommands, int>> add)
    {
        var format = new Option<LogFormat>("--format") { Description = "text, json (JSON Lines) or csv.", HelpName = "text|json|csv", DefaultValueFactory = _ => LogFormat.Text };
        var rehearsed = new Option<bool>("--rehearsed") { Description = "Rehearsed batches too." };
        var file = new Option<string?>("--out", "-o") { Description = "File to write; without it to the output.", HelpName = "FILE" };
        var search = new Option<string>("--search") { Description = "Only batches with these words in number, day, recipe, brewhouse or state.", HelpName = "WORDS", DefaultValueFactory = _ => "" };
        var csv = new Option<bool>("--csv") { Description = "The figures of each batch for a spreadsheet." };
        add(new("list", "Lists the batches, newest first.") { format, rehearsed, search }, (p, c) => c.List(p.GetValue(format), p.GetValue(rehearsed), p.GetValue(search)!));
        add(
            new("trends", "Shows what efficiency, evaporation, run-off and so on do over the batches, with the limits of a control chart.") { csv, rehearsed, search },
            (p, c) => c.Trends(p.GetValue(csv) ? LogFormat.Csv : LogFormat.Text, p.GetValue(rehearsed), p.GetValue(search)!));
        add(new("show", "Shows a batch's whole record.") { Batch }, (p, c) => c.Show(p.GetValue(Batch)));
        add(new("report", "Makes a batch's report: one HTML page to look at or print.") { Batch, file }, (p, c) => c.Report(p.GetValue(Batch), p.GetValue(file)));
    }

    private static Command Export(Func<ParseResult, Workplace> place, Option<UnitSystem> units)
    {
        var batch = new Argument<int?>("batch") { Description = "Number of the batch, see \"log list\".", Arity = ArgumentArity.ZeroOrOne };
        var all = new Option<bool>("--all") { Description = "The whole logbook as one plain text, for \"log import\"." };
        var format = new Option<ExportFormat>("--format") { Description = "text, json (JSON Lines), csv, or beerjson: a recipe of what was really brewed.", HelpName = "text|json|csv|beerjson", DefaultValueFactory = _ => ExportFormat.Text };
        var file = new Option<string?>("--out", "-o") { Description = "File to write; without it to the output.", HelpName = "FILE" };
        var command = new Command("export", "Writes a batch out, or all of them.") { batch, all, format, file };
        command.SetAction(p =>
        {
            var at = place(p);
            return at.Guard(() => (p.GetValue(batch), p.GetValue(all), p.GetValue(format)) switch
            {
                (null, true, _) => at.MoveCommands().ExportAll(p.GetValue(file)),
                ({ } one, false, ExportFormat.BeerJson) => at.LogCommands(p.GetValue(units)).ExportRecipe(one, p.GetValue(file)),
                ({ } one, false, var how) => at.LogCommands(p.GetValue(units)).Export(one, (LogFormat)how, p.GetValue(file)),
                _ => throw new UsageException("log export: give the number of a batch, or --all"),
            });
        });
        return command;
    }

    private static void Moving(Command log, Func<ParseResult, Workplace> place)
    {
        Add("backup", "Copies the logbook into a new folder, also while a day runs.", "path", (c, path) => c.Backup(path));
        Add("restore", "Brings a backup back into an empty logbook.", "path", (c, path) => c.Restore(path));
        Add("merge", "Takes in the batches of another logbook that are missing here; nothing is lost, nothing doubled.", "other", (c, path) => c.Merge(path));
        Add("import", "Takes in what \"log export --all\" wrote.", "file", (c, path) => c.Import(path));

        void Add(string name, string what, string argument, Func<MoveCommands, string, int> run)
        {
            var path = new Argument<string>(argument) { Description = "Where it is." };
            var command = new Command(name, what) { path };
            command.SetAction(p =>
            {
                var at = place(p);
                return at.Guard(() => run(at.MoveCommands(), p.GetValue(path)!));
            });
            log.Subcommands.Add(command);
        }
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
