using System.CommandLine;
using System.CommandLine.Parsing;
using BrewDeck.Commands.Shipping;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Wording;
using BrewDeck.Logbook;
using BrewDeck.Profiles;
using BrewDeck.Terminal.Paint;

namespace BrewDeck.Commands;

/// <summary>Every command with its options: the help and the exit codes come from here.</summary>
internal static class CommandTable
{
    private static readonly Option<string?> Logbook = new("--logbook")
    {
        Description = "Folder of the logbook and of your own profiles; without it your data folder.",
        Recursive = true,
        HelpName = "PATH",
    };

    private static readonly Option<string?> Brewer = new("--brewer")
    {
        Description = "Who brews, for the batch record; without it what BREWDECK_BREWER says.",
        Recursive = true,
        HelpName = "NAME",
    };

    private static readonly Option<UnitSystem> Units = new("--units")
    {
        // no default to show: it would be the word of the program, not the one that is typed
        Description = "Units of what is shown, and of a number that is typed without one; without it metric.",
        Recursive = true,
        HelpName = "metric|us",
    };

    // for the commands that open the deck: what the others print is English
    private static readonly Option<string?> Language = new("--language")
    {
        Description = "Language on the deck; without it what LC_ALL, LC_MESSAGES or LANG says.",
        HelpName = string.Join('|', Tongue.Codes),
    };

    private static string? LanguageOf(ParseResult parsed) => parsed.GetValue(Language) is not { } code ? null
        : Tongue.Codes.Contains(code, StringComparer.Ordinal) ? code
        : throw new UsageException($"--language: '{SafeText.OneLine(code)}' is not known; write {string.Join(" or ", Tongue.Codes)}");

    private static readonly Option<Theme> Colours = new("--theme")
    {
        Description = "Colours of the deck: dark unless told otherwise, light for outdoors, contrast for steam on the glasses.",
        HelpName = string.Join('|', Enum.GetNames<Theme>()).ToLowerInvariant(),
    };

    private static readonly Option<string?> Bell = new("--bell-command")
    {
        Description = "Command for a louder sound, run each time that the bell rings; it finds what is wanted of you in the variable BREWDECK_BELL.",
        HelpName = "COMMAND",
    };

    private static readonly Option<bool> Plainly = new("--plain")
    {
        Description = "Prints lines instead of drawing, and takes words instead of keys: for a screen reader or a pipe.",
    };

    private static readonly Option<string?> Probe = new("--probe")
    {
        Description = "File, FIFO or serial device, or mqtt://HOST[:PORT]/TOPIC, that offers readings as JSON lines, such as {\"vessel\":\"tun\",\"temperature_c\":66.4}.",
        HelpName = "PATH",
    };

    private static readonly Option<ReadingKind[]> ProbeRule = new("--probe-rule")
    {
        Description = "Kinds of reading taken from the probe without a key, once a step, when fresh, quiet and near what the step expects; may be given again.",
        HelpName = "temperature|volume|gravity|ph",
    };

    /// <summary>These count for any deck; what else is given to a rehearsal says what day to begin.</summary>
    private static readonly Option[] OfTheDeck = [Logbook, Brewer, Units, Language, Colours, Bell, Plainly, Probe, ProbeRule];

    private static DeckOptions Deck(ParseResult p) =>
        new(p.GetValue(Units), p.GetValue(Colours), p.GetValue(Bell), p.GetValue(Plainly), p.GetValue(Probe), [.. p.GetValue(ProbeRule) ?? []]) { Tongue = BrewersTongue.Of(LanguageOf(p)) };

    /// <exception cref="BrewDeck.Deck.LogbookException">There is no home to look in.</exception>
    public static string FolderOf(ParseResult parsed) => LogFolder.Resolve(parsed.GetValue(Logbook));

    public static RootCommand Root(TimeProvider time, TextWriter output, TextWriter errors)
    {
        Workplace Place(ParseResult parsed)
        {
            var place = new Workplace(parsed.GetValue(Logbook), time, output, errors);
            return parsed.GetValue(Brewer) is { Length: > 0 } name ? place.BrewedBy(name) : place;
        }
        var root = new RootCommand("Runs a brew day step by step. Without a command: the deck on this terminal.") { Logbook, Units, Brewer, Language, Colours, Bell };
        root.SetAction(p => OnDeck(p, Place(p)));
        var brew = new Command("brew", "The deck on this terminal, or with --plain in printed lines.") { Language, Colours, Bell, Plainly, Probe, ProbeRule };
        brew.SetAction(p => OnDeck(p, Place(p)));
        root.Subcommands.Add(brew);
        root.Subcommands.Add(Plan(Place));
        foreach (var stock in StockCommand.All(Place))
            root.Subcommands.Add(stock);
        root.Subcommands.Add(Kits(Place));
        root.Subcommands.Add(ScaleCommand.Of(Place, Units));
        root.Subcommands.Add(Rehearse(Place));
        root.Subcommands.Add(DebriefCommand.Of(Place, Units));
        root.Subcommands.Add(Calibrate(Place));
        root.Subcommands.Add(Convert(Place));
        root.Subcommands.Add(ReckonCommand.Of(Place, Units));
        root.Subcommands.Add(LessonsOf(Place));
        root.Subcommands.Add(LogCommandTable.Of(Place, Units));
        root.Subcommands.Add(Pictures(Place));
        foreach (var command in ShippingCommands.Of(root, output))
            root.Subcommands.Add(command);
        return root;
    }

    private static int OnDeck(ParseResult parsed, Workplace place) => place.Guard(() => DeckCommand.Brew(place, Deck(parsed)));

    private static Command Plan(Func<ParseResult, Workplace> place)
    {
        var day = new DayOptionSet(Units);
        var json = new Option<bool>("--json") { Description = "As one line of JSON." };
        var markdown = new Option<bool>("--markdown") { Description = "As Markdown." };
        var sheet = new Option<string?>("--sheet") { Description = "A run sheet to print, with boxes to fill in by hand.", HelpName = "FILE.html" };
        var command = new Command("plan", "Draws a day and prints its run sheet, or says why it cannot be brewed.") { json, markdown, sheet };
        day.AddTo(command);
        command.SetAction(p => p.GetValue(sheet) is { } file
            ? PlanCommand.Sheet(place(p), day.Of(p), file, p.GetValue(Units))
            : PlanCommand.Run(place(p), day.Of(p), p.GetValue(json) ? PlanFormat.Json : p.GetValue(markdown) ? PlanFormat.Markdown : PlanFormat.Text));
        return command;
    }

    private static Command Kits(Func<ParseResult, Workplace> place)
    {
        var day = new DayOptionSet(Units);
        var markdown = new Option<bool>("--markdown") { Description = "As a Markdown table." };
        var command = new Command("kits", "Sets one recipe side by side on every brewhouse and on each number of its circuits.") { markdown };
        day.AddTo(command);
        command.SetAction(p => KitsCommand.Run(place(p), day.Of(p), p.GetValue(markdown), Workplace.NotationOf(p.GetValue(Units))));
        return command;
    }

    private static Command Rehearse(Func<ParseResult, Workplace> place)
    {
        var day = new DayOptionSet(Units);
        var headless = new Option<bool>("--headless") { Description = "Without a screen, as fast as it goes." };
        var json = new Option<bool>("--json") { Description = "Headless: one line of JSON for each day." };
        var log = new Option<bool>("--log") { Description = "Headless: keep the days in the logbook, marked as rehearsed." };
        var seed = new Option<int>("--seed") { Description = "Draws what the brewhouse really does that day.", DefaultValueFactory = _ => 1 };
        var count = new Option<int>("--count") { Description = "Headless: number of days, each with the next seed.", DefaultValueFactory = _ => 1 };
        var house = new Option<int?>("--house") { Description = "Headless: the same hidden brewhouse on each of the days, drawn from this number." };
        var speed = new Option<double>("--speed") { Description = "Times faster than the clock, 1 to 3600.", DefaultValueFactory = _ => 60 };
        var mishap = new Option<string[]>("--mishap") { Description = "Something that goes wrong, such as stuck_bed:severe; may be given again. A wrong name lists them all.", HelpName = "NAME[:mild|plain|severe][@STEP]" };
        var mishaps = new Option<int>("--mishaps") { Description = "Number of further mishaps, drawn from the seed.", HelpName = "N" };
        var exercise = new Option<int?>("--exercise") { Description = "One of the graded exercises, 1 to 7, on the deck.", HelpName = "N" };
        var command = new Command("rehearse", "Brews a rehearsed day on a simulated brewhouse.") { headless, json, log, seed, count, house, speed, mishap, mishaps, exercise, Language, Colours, Bell, Plainly, Probe, ProbeRule };
        day.AddTo(command);
        command.SetAction(p =>
        {
            var options = new RehearseOptions
            {
                Seed = p.GetValue(seed),
                Count = p.GetValue(count),
                Json = p.GetValue(json),
                Keep = p.GetValue(log),
                House = p.GetValue(house),
                Speed = p.GetValue(speed),
                Mishaps = p.GetValue(mishap) ?? [],
                Drawn = p.GetValue(mishaps),
                Exercise = p.GetValue(exercise),
                Given = [.. p.CommandResult.Children.OfType<OptionResult>().Where(r => !r.Implicit && !OfTheDeck.Contains(r.Option)).Select(r => r.Option.Name)],
            };
            var at = place(p);
            return p.GetValue(headless)
                ? RehearseCommand.Headless(at, day.Of(p), options)
                : at.Guard(() => RehearseCommand.OnDeck(at, day.Of(p), options, Deck(p)));
        });
        return command;
    }

    private static Command Calibrate(Func<ParseResult, Workplace> place)
    {
        var day = new DayOptionSet(Units);
        var json = new Option<bool>("--json") { Description = "As one line of JSON." };
        var seed = new Option<int>("--seed") { Description = "Seed of the first day.", DefaultValueFactory = _ => 1 };
        var count = new Option<int>("--count") { Description = "Number of rehearsed days.", DefaultValueFactory = _ => 100 };
        var mends = new Option<bool>("--take-remedies") { Description = "The stand-in brewer takes remedies; without it the day is left as it goes." };
        var power = new Option<double>("--hidden-power") { Description = "Heat that the profile does not know of, percent." };
        var yields = new Option<double>("--hidden-yield") { Description = "Mash yield that the profile does not know of, points." };
        var remedies = new Option<bool>("--remedies") { Description = "Rehearse each off-plan day twice, with the best remedy and without, and count what it was worth." };
        var command = new Command("calibrate", "Rehearses many days and counts how often the bands of the outlook held the figures that the days gave.") { json, seed, count, mends, power, yields, remedies };
        day.AddTo(command);
        command.SetAction(p => CalibrateCommand.Run(
            place(p), day.Of(p), new(p.GetValue(seed), p.GetValue(count), p.GetValue(mends), p.GetValue(power), p.GetValue(yields), p.GetValue(remedies)), p.GetValue(json)));
        return command;
    }

    private static Command Convert(Func<ParseResult, Workplace> place)
    {
        var input = new Argument<string>("input") { Description = "A recipe: BeerJSON 1.0, BeerXML 1.0 or TOML." };
        var output = new Option<string?>("--output", "-o") { Description = "File to write, .toml or .json; without it TOML to the terminal.", HelpName = "PATH" };
        var command = new Command("convert", "Turns a recipe from one format into another and reports what could not be carried over.") { input, output };
        command.SetAction(p =>
        {
            var at = place(p);
            return at.Guard(() => ConvertCommand.Run(p.GetValue(input)!, p.GetValue(output), at.Output, at.Errors, at.Profiles().Catalogue));
        });
        return command;
    }

    private static Command Pictures(Func<ParseResult, Workplace> place)
    {
        var folder = new Argument<string>("folder") { Description = "Where the pictures are." };
        var check = new Option<bool>("--check") { Description = "Only say which are out of date." };
        var command = new Command("screenshots", "Makes the pictures of the documentation from a rehearsed day.") { folder, check };
        command.Hidden = true;
        command.SetAction(p => Screenshots.Run(place(p), p.GetValue(folder)!, p.GetValue(check)));
        return command;
    }

    private static Command LessonsOf(Func<ParseResult, Workplace> place)
    {
        var house = new Option<string>("--brewhouse") { Description = "A file, or the name of a bundled or own one.", HelpName = "FILE", DefaultValueFactory = _ => ProfileFolder.EverydayBrewhouse };
        var rehearsed = new Option<bool>("--rehearsed") { Description = "Rehearsed batches too." };
        var json = new Option<bool>("--json") { Description = "As one line of JSON." };
        var command = new Command("lessons", "What the batches say about a brewhouse; they are accepted on the deck.") { house, rehearsed, json };
        command.SetAction(p => LessonsCommand.Run(place(p), p.GetValue(house)!, p.GetValue(rehearsed), p.GetValue(json), Workplace.NotationOf(p.GetValue(Units))));
        return command;
    }
}
