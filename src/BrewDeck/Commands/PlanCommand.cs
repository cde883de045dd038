using BrewDeck.Core.Planning;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Commands;

internal enum PlanFormat
{
    Text,
    Markdown,
    Json,
}

/// <summary><c>brewdeck plan</c>: draws a day and prints it.</summary>
internal static class PlanCommand
{
    public static int Run(Workplace place, DayOptions day, PlanFormat format) => place.Guard(() =>
    {
        var result = day.Draw(place.Profiles());
        if (format == PlanFormat.Json)
            place.Output.WriteLine(PlanJson.Of(result));
        else if (result is PlanResult.Drawn { Plan: var plan })
            place.Output.Write(format == PlanFormat.Markdown ? PlanText.Markdown(plan) : PlanText.Plain(plan));
        if (result is not PlanResult.Refused { Refusals: var refusals })
            return ExitCode.Done;
        foreach (var refusal in refusals)
            place.Say($"{RefusalWords.Of(refusal, Notation.Metric)} {RefusalWords.Mends(refusal, Notation.Metric)}", ExitCode.Refused);
        return ExitCode.Refused;
    });
}
