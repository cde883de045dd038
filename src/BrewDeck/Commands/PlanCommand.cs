using BrewDeck.Core.Planning;
using BrewDeck.Deck.Wording;
using BrewDeck.Reports;

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
            place.Output.Write(format == PlanFormat.Markdown ? PlanText.Markdown(plan, day.Notation) : PlanText.Plain(plan, day.Notation));
        SayPast(result, place, day.Notation);
        SayUnmet(result, place, day.Notation);
        return Said(result, place, day.Notation);
    });

    /// <summary>A day that would have begun already can be drawn, and is hardly what was meant.</summary>
    private static void SayPast(PlanResult result, Workplace place, Notation notation)
    {
        if (result is PlanResult.Drawn { Plan: var plan } && PlanLines.StartMs(plan) is { } start && start < place.Time.GetUtcNow().ToUnixTimeMilliseconds())
            place.Errors.WriteLine($"brewdeck: this day begins at {notation.Date(start)}, which is past; a time without Z or +02:00 after it is this computer's");
    }

    /// <summary>With a start of its own a day ends when it ends.</summary>
    private static void SayUnmet(PlanResult result, Workplace place, Notation notation)
    {
        if (result is PlanResult.Drawn { Plan: { Choices: { Start: not null, Finish: { } wished } } plan } && PlanLines.StartMs(plan) is { } start
            && start + (long)(1000 * plan.Totals.DayS) is var end && end > wished.ToUnixTimeMilliseconds())
            place.Errors.WriteLine($"brewdeck: --start counts, so --finish {notation.Date(wished.ToUnixTimeMilliseconds())} is not kept: all is clean at {notation.Date(end)}");
    }

    /// <summary>As a page to print and fill in by hand.</summary>
    public static int Sheet(Workplace place, DayOptions day, string file, UnitSystem units) => place.Guard(() =>
    {
        var result = day.Draw(place.Profiles());
        if (result is PlanResult.Drawn { Plan: var plan })
            OutputFile.Write(file, RunSheetPage.Of(plan, Workplace.NotationOf(units)));
        return Said(result, place, day.Notation);
    });

    private static int Said(PlanResult result, Workplace place, Notation notation)
    {
        if (result is not PlanResult.Refused { Refusals: var refusals })
            return ExitCode.Done;
        foreach (var line in RefusalLines.Of(refusals, notation))
            place.Say(line, ExitCode.Refused);
        return ExitCode.Refused;
    }
}
