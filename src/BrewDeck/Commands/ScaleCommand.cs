using System.CommandLine;
using BrewDeck.Core.Planning;
using BrewDeck.Deck;
using BrewDeck.Deck.Wording;
using BrewDeck.Profiles;
using BrewDeck.Reports;

namespace BrewDeck.Commands;

/// <summary><c>brewdeck scale</c>: a recipe moved from one brewhouse to another, side by side.</summary>
internal static class ScaleCommand
{
    private sealed record Asked(string Recipe, string From, string To, string Keep, string? Batch, bool Json, string? Output);

    public static Command Of(Func<ParseResult, Workplace> place, Option<UnitSystem> units)
    {
        var recipe = new Option<string>("--recipe") { Description = "A file, or the name of a bundled or own one.", HelpName = "FILE", DefaultValueFactory = _ => ProfileFolder.EverydayRecipe };
        var from = new Option<string>("--from") { Description = "The brewhouse that it is brewed on now.", HelpName = "FILE", DefaultValueFactory = _ => ProfileFolder.EverydayBrewhouse };
        var to = new Option<string>("--to") { Description = "The brewhouse that it is to be brewed on.", HelpName = "FILE", Required = true };
        var keep = new Option<string>("--keep") { Description = "What is to stay, with commas between: gravity, bitterness, colour, ratio (liquor to grist).", HelpName = "FIGURES", DefaultValueFactory = _ => "gravity,bitterness,colour,ratio" };
        var batch = new Option<string?>("--batch") { Description = "Into the fermenter on the new brewhouse, such as \"40 L\"; without it what is usual there.", HelpName = "VOLUME" };
        var json = new Option<bool>("--json") { Description = "As one line of JSON." };
        var output = new Option<string?>("--output", "-o") { Description = "Writes the new recipe to this TOML file.", HelpName = "PATH" };
        var command = new Command("scale", "Moves a recipe to another brewhouse and shows both side by side.") { recipe, from, to, keep, batch, json, output };
        command.SetAction(p => Run(
            place(p),
            new(p.GetValue(recipe)!, p.GetValue(from)!, p.GetValue(to)!, p.GetValue(keep)!, p.GetValue(batch), p.GetValue(json), p.GetValue(output)),
            Workplace.NotationOf(p.GetValue(units))));
        return command;
    }

    private static int Run(Workplace place, Asked asked, Notation notation) => place.Guard(() =>
    {
        var keep = Kept(asked.Keep);
        var day = new DayOptions { Batch = asked.Batch, Units = notation.Units }.Choices();
        var profiles = place.Profiles();
        var (from, to) = (profiles.Brewhouse(profiles.FindBrewhouse(asked.From)), profiles.Brewhouse(profiles.FindBrewhouse(asked.To)));
        var recipe = profiles.Recipe(profiles.FindRecipe(asked.Recipe));
        if (RecipeScaling.Of(from, to, recipe, keep, day with { BatchL = null }, day.BatchL) is not { } scaling)
            return place.Say($"{from.Name} or {to.Name} cannot mash {recipe.Name}: it cannot raise the mash from rest to rest", ExitCode.Refused);
        var refused = Planner.Draw(to, scaling.New.Recipe, day) as PlanResult.Refused;
        if (asked.Json)
            place.Output.WriteLine(ScalingJson.Of(scaling));
        else if (refused is null)
            Print(place.Output, scaling, notation);
        foreach (var missed in ScalingWords.Missed(scaling, notation))
            place.Errors.WriteLine($"brewdeck: {missed}");
        if (refused is not null)
            return Refused(place, refused, $"{recipe.Name} cannot be brewed like this on {to.Name}", notation);
        if (asked.Output is { } path)
            Write(path, scaling);
        return ExitCode.Done;
    });

    private static int Refused(Workplace place, PlanResult.Refused refused, string what, Notation notation)
    {
        place.Say($"{what}:", ExitCode.Refused);
        foreach (var line in RefusalLines.Of(refused.Refusals, notation))
            place.Say(line, ExitCode.Refused);
        return ExitCode.Refused;
    }

    private static KeptFigures Kept(string list) => list
        .Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
        .Select(word => ScalingWords.Choices.FirstOrDefault(c => ScalingJson.Name(c).Equals(word, StringComparison.OrdinalIgnoreCase)) is var found and not KeptFigures.None
            ? found
            : throw new UsageException($"--keep: '{word}' is not known; write some of gravity,bitterness,colour,ratio"))
        .Aggregate(KeptFigures.None, (a, b) => a | b);

    private static void Print(TextWriter output, Scaling scaling, Notation notation)
    {
        ScalingRow[] rows =
        [
            new(scaling.Old.Recipe.Name, scaling.Old.House.Name, scaling.New.House.Name),
            .. ScalingWords.Figures(scaling, notation),
            .. ScalingWords.Amounts(scaling, notation),
        ];
        int name = rows.Max(r => r.Name.Length), old = rows.Max(r => r.Old.Length), moved = rows.Max(r => r.New.Length);
        foreach (var row in rows)
            output.WriteLine($"{row.Name.PadRight(name)}  {row.Old.PadLeft(old)}  {row.New.PadLeft(moved)}");
    }

    private static void Write(string path, Scaling scaling)
    {
        if (File.Exists(path))
            throw new ProfileException($"{path}: is there already; remove it or choose another name");
        OutputFile.Write(path, RecipeFile.Write(scaling.Written));
    }
}
