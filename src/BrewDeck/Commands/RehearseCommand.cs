using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Deck;
using BrewDeck.Deck.Plain;
using BrewDeck.Logbook;
using BrewDeck.Rehearsals;
using BrewDeck.Simulator.Rehearsing;
using BrewDeck.Simulator.Truth;

namespace BrewDeck.Commands;

/// <summary><c>brewdeck rehearse</c>: a simulator stands in for the vessels, and for the brewer unless the brewer takes over.</summary>
internal static class RehearseCommand
{
    /// <summary>Headless days begin then unless the day says otherwise, so that a seed gives the same lines on any date.</summary>
    private static readonly DateTimeOffset FixedStart = new(2026, 5, 30, 7, 0, 0, TimeSpan.Zero);

    public static int Headless(Workplace place, DayOptions day, RehearseOptions options) => place.Guard(() =>
    {
        var (seed, count, json) = (options.Seed, options.Count, options.Json);
        if (count < 1)
            throw new UsageException($"--count: {count} is too few; write 1 or more");
        if (options.Exercise is not null)
            throw new UsageException("--exercise: is for the deck; leave out --headless");
        var profiles = place.Profiles();
        if (day.Draw(profiles) is not PlanResult.Drawn { Plan: var plan })
            return PlanCommand.Run(place, day, json ? PlanFormat.Json : PlanFormat.Text);
        RehearsalResult Day(int i)
        {
            using var journal = options.Keep ? place.OpenJournal() : Journal.Open(new MemoryDisk(), Workplace.StatusOf);
            var card = options.Deal(plan, seed + i);
            return Play(new SessionPorts(journal, profiles, new Unwatched(card)), place.Brewer, plan, card, options.House, i);
        }
        var aborted = 0;
        // days that are kept wait for each other: one logbook has one writer
        foreach (var result in options.Keep ? Enumerable.Range(0, count).Select(Day) : ManyDays.Of(count, Day))
        {
            aborted += result.Ended == RehearsalResult.Pitched ? 0 : 1;
            place.Output.WriteLine(json ? RehearsalJson.Of(result, plan) : RehearsalText.Of(result, plan));
        }
        return aborted == 0 ? ExitCode.Done : ExitCode.Refused;
    });

    private static RehearsalResult Play(SessionPorts ports, string? brewer, Plan plan, RehearsalCard card, int? house, int day)
    {
        // days on one brewhouse follow each other
        var start = (plan.Choices.Start ?? FixedStart).AddDays(house is null ? 0 : day);
        var session = new Session(ports, new SessionSettings { ProgramVersion = Workplace.Version, Brewer = brewer, TakesUp = false }, start);
        if (!session.Begin(plan, start))
            throw new LogbookException(session.Screen.Notice?.ToString() ?? "the rehearsed batch could not be opened");
        return RehearsalRun.Of(
            house is { } own ? HiddenTruth.Draw(plan.Brewhouse, plan.Choices, own, card.Seed) : HiddenTruth.Draw(plan.Brewhouse, plan.Choices, card.Seed),
            new SessionBook(session), start.ToUnixTimeMilliseconds(), mishaps: card.Mishaps);
    }

    /// <summary>On the deck, at a chosen speed. A rehearsal that was broken off is taken up again.</summary>
    public static int OnDeck(Workplace place, DayOptions day, RehearseOptions rehearsal, DeckOptions options)
    {
        if (rehearsal.Speed is not (>= 1 and <= 3600))
            throw new UsageException($"--speed: {rehearsal.Speed} is out of range; write 1 to 3600");
        if (rehearsal.Exercise is { } number)
            return Exercise(place, number, options);
        if (day.Draw(place.Profiles()) is not PlanResult.Drawn { Plan: var plan })
            return PlanCommand.Run(place, day, PlanFormat.Text);
        var (code, next) = Once(place, (plan, rehearsal.Deal(plan, rehearsal.Seed)), rehearsal, options);
        return next is { } exercise ? Exercise(place, exercise, options) : code;
    }

    /// <summary>Goes on with the rehearsal that was broken off.</summary>
    public static int GoOn(Workplace place, DeckOptions options)
    {
        var (code, next) = Once(place, null, new RehearseOptions { Speed = 1 }, options);
        return next is { } exercise ? Exercise(place, exercise, options) : code;
    }

    /// <summary>An exercise on the deck, and those that are chosen on it afterwards.</summary>
    /// <exception cref="UsageException">There is none of that number.</exception>
    public static int Exercise(Workplace place, int number, DeckOptions options)
    {
        var (code, next) = (ExitCode.Done, (int?)number);
        while (next is { } chosen)
        {
            (code, next) = Once(place, ExerciseDay.Draw(chosen, place.Profiles()), new RehearseOptions { Speed = 1, Given = [$"--exercise {chosen}"] }, options);
        }
        return code;
    }

    /// <param name="fresh">Begun when none was broken off.</param>
    /// <returns>The exit code, and the exercise that the deck was left for.</returns>
    private static (int Code, int? Exercise) Once(Workplace place, (Plan Plan, RehearsalCard Card)? fresh, RehearseOptions asked, DeckOptions options)
    {
        using var journal = place.OpenJournal();
        var deck = RehearsalDeck.Open(
            journal, place.Profiles(), DeckCommand.Settings(place, options) with { Unheeded = asked.Given }, place.Time.GetLocalNow(), asked.Speed, new ExerciseBook(place.Folder));
        if (deck.Session.State is null && fresh is var (plan, card))
            deck.Begin(plan, card);
        if (options.Plain && !deck.Clock.HandsOn)
            place.Output.WriteLine(PlainSpeech.StandIn(options.Notation));
        var code = DeckCommand.Show(place, deck.Live, options, "rehearse");
        if (deck.Live.PowerLost)
            place.Output.WriteLine("The laptop lost its power, as was dealt; the brew goes on without it. Start brewdeck rehearse again to go on.");
        return (code, deck.Session.Exercise);
    }

    /// <summary>A headless day has no clock to steer; what it writes is marked as rehearsed all the same.</summary>
    private sealed class Unwatched(RehearsalCard card) : IRehearsalControls
    {
        public RehearsalCard? Card => card;

        public double Speed { get; set; } = 1;

        public bool Paused { get; set; }

        public bool HandsOn { get; set; }
    }
}
