using System.CommandLine;
using BrewDeck.Deck.Reckoning;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Commands;

/// <summary><c>brewdeck reckon NAME</c>: a command for each sum of the reckoner's table, an option for each of its inputs.</summary>
internal static class ReckonCommand
{
    public static Command Of(Func<ParseResult, Workplace> place, Option<UnitSystem> units)
    {
        var command = new Command("reckon", "One-off sums; \"reckon NAME --help\" says what a sum asks for.");
        foreach (var sum in Sums.All)
            command.Subcommands.Add(Of(sum, place, units));
        return command;
    }

    private static readonly string[] Always = ["--help", "--json", "--logbook", "--units", "--brewer"];

    private static Command Of(Sum sum, Func<ParseResult, Workplace> place, Option<UnitSystem> units)
    {
        var command = new Command(sum.Name, $"{sum.Title}. By {sum.Formula}. Source: {sum.Source}. Valid: {sum.Range}.");
        var options = sum.Inputs.Select(i => OptionOf(i, sum)).ToList();
        options.ForEach(command.Options.Add);
        var json = new Option<bool>("--json") { Description = "As one line of JSON." };
        command.Options.Add(json);
        command.SetAction(p =>
        {
            var texts = sum.Inputs.Zip(options).Where(x => p.GetValue(x.Second) is not null).ToDictionary(x => x.First.Name, x => p.GetValue(x.Second)!);
            return Run(place(p), sum, texts, p.GetValue(units), p.GetValue(json));
        });
        return command;
    }

    private static Option<string?> OptionOf(SumInput input, Sum sum) => new("--" + input.Name, [.. AsOnTheDeck(input, sum)])
    {
        Description = Names.Sentence(input.Label.ToString()) + (input switch
        {
            SumInput.Choice choice => $": {string.Join(", ", choice.Options)}",
            SumInput.Quantity quantity => $", {SumReader.Range(quantity, Notation.Metric)}",
            _ => "",
        }) + (input.Default is { } preset ? $"; {preset} when not given." : $"; must be given, such as {input.Example}."),
        HelpName = input is SumInput.Choice ? "WORD" : "NUMBER",
    };

    /// <summary>The words that the deck asks with are taken too, where they name one input.</summary>
    private static IEnumerable<string> AsOnTheDeck(SumInput input, Sum sum)
    {
        var said = Said(input);
        return sum.Inputs.Count(i => Said(i) == said) == 1 && sum.Inputs.All(i => "--" + i.Name != said) && !Always.Contains(said) ? [said] : [];
    }

    /// <summary>"sample at" as "--sample-at".</summary>
    private static string Said(SumInput input) => "--" + string.Join('-', string.Concat(input.Label.ToString().ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) ? c : ' ')).Split(' ', StringSplitOptions.RemoveEmptyEntries));

    private static int Run(Workplace place, Sum sum, Dictionary<string, string> texts, UnitSystem units, bool json)
    {
        if (sum.Inputs.FirstOrDefault(i => i.Default is null && !texts.ContainsKey(i.Name)) is { } left)
            return place.Say(Missing(sum, left), ExitCode.Usage);
        var read = SumReader.Read(sum, texts, Notation.Metric with { Units = units });
        if (read.Values is not { } values)
            return place.Say($"--{read.Input}: {read.Fault}", ExitCode.Usage);
        var results = sum.Reckon(values);
        if (json)
            place.Output.WriteLine(Json(sum, results));
        else
            Write(place.Output, sum, results, Taken(sum, texts), Notation.Metric with { Units = units });
        return ExitCode.Done;
    }

    /// <summary>What was not given and therefore taken as usual; a tun that was left out is told, for the liquor must be hotter with it.</summary>
    private static IEnumerable<(string Label, string Value)> Taken(Sum sum, Dictionary<string, string> texts)
    {
        var left = sum.Inputs.Where(i => i.Default is not null && !texts.ContainsKey(i.Name)).ToList();
        var tun = left.Find(i => i.Name == "tun");
        left.RemoveAll(i => tun is not null && i.Name.StartsWith("tun", StringComparison.Ordinal));
        if (tun is not null)
            yield return ("tun", $"not counted: give its heat capacity, such as --tun \"{tun.Example}\"; a plan counts it");
        if (left.Count > 0)
            yield return ("taken as usual", string.Join(", ", left.Select(i => $"{i.Label} {i.Default}")));
    }

    private static string Missing(Sum sum, SumInput input)
    {
        var range = input is SumInput.Quantity quantity ? $", {SumReader.Range(quantity, Notation.Metric)}" : "";
        var example = input.Example.Contains(' ', StringComparison.Ordinal) ? $"\"{input.Example}\"" : input.Example;
        return $"reckon {sum.Name}: --{input.Name} is missing ({input.Label}{range}); write such as --{input.Name} {example}";
    }

    private static void Write(TextWriter output, Sum sum, double[] results, IEnumerable<(string Label, string Value)> taken, Notation notation)
    {
        var beside = SumLines.Beside(sum, results, notation).Select((b, i) => (Label: i == 0 ? "by other rules" : "", Value: $"{b.Value} by {b.Label}"));
        var lines = SumLines.Results(sum, results, notation).Concat(beside).Concat(taken).Concat(SumLines.About(sum, notation)).ToList();
        var wide = lines.Max(l => l.Label.Length);
        output.WriteLine(sum.Title);
        foreach (var (label, value) in lines)
            output.WriteLine($"  {label.PadRight(wide)}  {value}");
    }

    private static string Json(Sum sum, double[] results) => JsonOut.Line(json =>
    {
        json.WriteStartObject();
        json.WriteString("sum", sum.Name);
        foreach (var (output, value) in sum.Outputs.Concat(sum.Beside).Zip(results))
            json.Round(output.Name, value, 6);
        json.WriteString("formula", sum.Formula.ToString());
        json.WriteString("source", sum.Source.ToString());
        json.WriteString("valid", sum.Range.ToString());
        json.WriteEndObject();
    });
}
