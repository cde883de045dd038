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

    private static Command Of(Sum sum, Func<ParseResult, Workplace> place, Option<UnitSystem> units)
    {
        var command = new Command(sum.Name, $"{sum.Title}. By {sum.Formula}. Source: {sum.Source}. Valid: {sum.Range}.");
        var options = sum.Inputs.Select(OptionOf).ToList();
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

    private static Option<string?> OptionOf(SumInput input) => new("--" + input.Name)
    {
        Description = Names.Sentence(input.Label.ToString()) + (input switch
        {
            SumInput.Choice choice => $": {string.Join(", ", choice.Options)}",
            SumInput.Quantity quantity => $", {SumReader.Range(quantity, Notation.Metric)}",
            _ => "",
        }) + (input.Default is { } preset ? $"; {preset} when not given." : "; must be given."),
        HelpName = input.Example,
    };

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
            Write(place.Output, sum, results, Notation.Metric with { Units = units });
        return ExitCode.Done;
    }

    private static string Missing(Sum sum, SumInput input)
    {
        var range = input is SumInput.Quantity quantity ? $", {SumReader.Range(quantity, Notation.Metric)}" : "";
        var example = input.Example.Contains(' ', StringComparison.Ordinal) ? $"\"{input.Example}\"" : input.Example;
        return $"reckon {sum.Name}: --{input.Name} is missing ({input.Label}{range}); write such as --{input.Name} {example}";
    }

    private static void Write(TextWriter output, Sum sum, double[] results, Notation notation)
    {
        var lines = SumLines.Results(sum, results, notation).Concat(SumLines.About(sum, notation)).ToList();
        var wide = lines.Max(l => l.Label.Length);
        output.WriteLine(sum.Title);
        foreach (var (label, value) in lines)
            output.WriteLine($"  {label.PadRight(wide)}  {value}");
    }

    private static string Json(Sum sum, double[] results) => JsonOut.Line(json =>
    {
        json.WriteStartObject();
        json.WriteString("sum", sum.Name);
        for (var i = 0; i < results.Length; i++)
            json.Round(sum.Outputs[i].Name, results[i], 6);
        json.WriteString("formula", sum.Formula.ToString());
        json.WriteString("source", sum.Source.ToString());
        json.WriteString("valid", sum.Range.ToString());
        json.WriteEndObject();
    });
}
