using System.Globalization;
using BrewDeck.Core.Planning;
using BrewDeck.Rehearsals;

namespace BrewDeck.Commands;

/// <summary><c>brewdeck calibrate --remedies</c>: what the best remedy was worth on days that were off the plan.</summary>
internal static class RemedyTrialCommand
{
    public static int Run(Workplace place, Plan plan, CalibrateOptions options, long startMs, bool json)
    {
        var trial = new RemedyTrial(plan, startMs);
        foreach (var pair in ManyDays.Of(options.Count, i => trial.Play(CalibrateCommand.Truth(plan, options, options.Seed + i), i)))
            trial.Add(pair);
        foreach (var line in json ? [Json(trial, plan, options)] : Text(trial, plan))
            place.Output.WriteLine(line);
        return trial.Aborted == 0 ? ExitCode.Done : ExitCode.Refused;
    }

    private static IEnumerable<string> Text(RemedyTrial trial, Plan plan)
    {
        yield return $"{plan.Recipe.Name} on {plan.Brewhouse.Name}, {plan.Choices.MattersMost} first: {trial.Days} off-plan days, {trial.Aborted} aborted, {trial.BrokeLimits} limits broken";
        yield return "best remedy        days   nearer with it   gravity as promised";
        foreach (var (kind, counted, nearer, promises, kept) in trial.Kinds.Append(Sum(trial)))
        {
            var name = counted + promises > 0 && kind == default ? "all" : SnakeName.Of(kind);
            yield return string.Create(CultureInfo.InvariantCulture, $"{name,-16}{counted,7}{Share(nearer, counted),17}{Share(kept, promises),22}");
        }
    }

    private static (Core.Running.RemedyKind Kind, int Counted, int Nearer, int Promises, int Kept) Sum(RemedyTrial trial) => (
        default, trial.Kinds.Sum(k => k.Counted), trial.Kinds.Sum(k => k.Nearer), trial.Kinds.Sum(k => k.Promises), trial.Kinds.Sum(k => k.Kept));

    private static string Share(int part, int of) =>
        of == 0 ? "-" : string.Create(CultureInfo.InvariantCulture, $"{100.0 * part / of:0.0} % of {of}");

    private static string Json(RemedyTrial trial, Plan plan, CalibrateOptions options) => JsonOut.Line(json =>
    {
        json.WriteStartObject();
        json.WriteString("recipe", plan.Recipe.Name);
        json.WriteString("brewhouse", plan.Brewhouse.Name);
        json.WriteString("matters_most", SnakeName.Of(plan.Choices.MattersMost));
        json.WriteNumber("seed", options.Seed);
        json.WriteNumber("days", trial.Days);
        json.WriteNumber("aborted", trial.Aborted);
        json.WriteNumber("limits_broken", trial.BrokeLimits);
        json.WriteStartArray("remedies");
        foreach (var (kind, counted, nearer, promises, kept) in trial.Kinds)
        {
            json.WriteStartObject();
            json.WriteString("kind", SnakeName.Of(kind));
            json.WriteNumber("days", counted);
            json.WriteNumber("nearer", nearer);
            json.WriteNumber("promises", promises);
            json.WriteNumber("kept", kept);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteEndObject();
    });
}
