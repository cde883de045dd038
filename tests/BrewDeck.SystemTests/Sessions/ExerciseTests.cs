using BrewDeck.Commands;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Training;
using BrewDeck.Deck.Wording;
using BrewDeck.Logbook;
using BrewDeck.Profiles;
using BrewDeck.Rehearsals;
using BrewDeck.Simulator.Rehearsing;
using BrewDeck.Simulator.Truth;
using BrewDeck.SystemTests.Logbook;

namespace BrewDeck.SystemTests.Sessions;

/// <summary>Exercises: chosen on the deck, judged at their end, remembered.</summary>
public sealed class ExerciseTests : IDisposable
{
    private static readonly DateTimeOffset Start = new(2026, 5, 30, 7, 0, 0, TimeSpan.Zero);

    private readonly TempFolder _own = new();

    private DateTimeOffset _now = Start;

    public static TheoryData<int> Numbers => [.. Exercises.All.Select(e => e.Number)];

    public void Dispose() => _own.Dispose();

    /// <summary>Its point is to find what goes wrong: the brief names none of it, the verdict does.</summary>
    [Fact]
    public void What_the_last_exercise_has_in_store_is_not_told_before_it()
    {
        var exercise = Exercises.Find(7)!;
        var brief = string.Join("\n", ExerciseWords.Brief(exercise, Notation.Metric).Select(l => l.ToString()));
        Assert.All(exercise.Mishaps, m => Assert.DoesNotContain(MishapWords.Name(m.Kind, Notation.Metric), brief, StringComparison.OrdinalIgnoreCase));
        Assert.DoesNotContain("weigh-in", brief, StringComparison.Ordinal);
        Assert.DoesNotContain("hardly cools", brief, StringComparison.Ordinal);
        Assert.Contains("what goes wrong answered within 15 min", brief, StringComparison.Ordinal);
        var verdict = string.Join("\n", ExerciseWords.Verdict(exercise, [.. exercise.Passes.Select(p => new Judged(p, true))], Notation.Metric).Select(l => l.ToString()));
        Assert.All(exercise.Mishaps, m => Assert.Contains(MishapWords.Name(m.Kind, Notation.Metric), verdict, StringComparison.Ordinal));
    }

    [Fact]
    public void One_is_brewed_by_keys_judged_and_remembered()
    {
        using var at = new AtTheRehearsal(1, _own.Path);
        Assert.Contains("Exercise 1: Water only", at.Text, StringComparison.Ordinal);
        Assert.True(at.Clock.HandsOn);
        Assert.Contains(at.Screen.Keys, k => k is { Key: "space", Does: "begin" });
        at.Strike(" ");
        Assert.IsType<DeckScreen>(at.Screen);
        at.Until(() => at.Screen is TextScreen);

        Assert.Contains("Exercise 1: Water only: passed", at.Text, StringComparison.Ordinal);
        Assert.Equal("the exercise is over", at.State.AbortReason);
        at.Strike("q");
        Assert.Equal("The exercise is over.", Assert.IsType<DeckScreen>(at.Screen).Headline.ToString());
        Assert.DoesNotContain("given up", at.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("borted", at.Text, StringComparison.Ordinal);
        Assert.True(new ExerciseBook(_own.Path).HasPassed(1));
        Assert.False(new ExerciseBook(_own.Path).HasPassed(2));
    }

    [Fact]
    public void One_that_was_given_up_is_not_passed()
    {
        using var at = new AtTheRehearsal(2, _own.Path);
        at.Strike("q").Strike("x").Line("abort");

        Assert.Contains("Exercise 2: The first mash: not passed yet", at.Text, StringComparison.Ordinal);
        Assert.False(new ExerciseBook(_own.Path).HasPassed(2));
    }

    [Fact]
    public void The_deck_lists_them_and_is_left_for_the_chosen_one()
    {
        var book = new ExerciseBook(_own.Path);
        book.Keep(1, 1, passed: true, Start);
        using var journal = Journal.Open(new MemoryDisk(), Workplace.StatusOf);
        var session = new Session(
            new SessionPorts(journal, ProfileFolder.BesideProgram(_own.Path)) { Exercises = book }, new SessionSettings(), Start);
        Strike(session, KeyName.Down, KeyName.Enter);
        var list = Assert.IsType<ListScreen>(session.Screen);
        Assert.Equal(["passed", "", "", "", "", "", ""], list.Rows.Select(r => r.Cells[2]));

        Strike(session, KeyName.Down, KeyName.Enter);
        Assert.True(session.Ended);
        Assert.Equal(2, session.Exercise);
    }

    [Fact]
    public void A_torn_line_of_the_book_counts_as_no_try()
    {
        File.WriteAllText(Path.Combine(_own.Path, ExerciseBook.FileName), "{\"exercise\":1,\"passed\":true}\n{\"exercise\":2,\"pas");
        var book = new ExerciseBook(_own.Path);

        Assert.True(book.HasPassed(1));
        Assert.False(book.HasPassed(2));
    }

    /// <summary>About two seconds a whole day and its debrief.</summary>
    [Theory(Explicit = true)]
    [MemberData(nameof(Numbers))]
    public void A_practised_brewer_passes_each(int number)
    {
        var judged = Judged(number, Manner.Practised);
        Assert.All(judged, j => Assert.True(j.Holds, $"{j.Criterion}"));
    }

    [Fact]
    public void Who_leaves_a_mishap_alone_does_not_pass() =>
        Assert.Contains(Judged(4, new Manner(Mends: false)), j => !j.Holds);

    private IReadOnlyList<Judged> Judged(int number, Manner manner)
    {
        var exercise = Exercises.Find(number)!;
        var (plan, card) = ExerciseDay.Draw(number, ProfileFolder.BesideProgram(_own.Path));
        if (manner != Manner.Practised)
            manner = manner with { Answers = manner.Answers.AddRange(card.Mishaps.Select(m => KeyValuePair.Create(m.Kind, Answer.Leave))) };
        var book = new PaperBook(new BatchOpened(Start.ToUnixTimeMilliseconds(), plan, "test", Rehearsed: true) { Card = card });
        RehearsalRun.Of(HiddenTruth.Draw(plan.Brewhouse, plan.Choices, card.Seed), book, Start.ToUnixTimeMilliseconds(), manner, card.Mishaps);
        // as far as the exercise goes
        var until = exercise.Until is { } kind ? book.State.Steps.First(s => s.Spec.Kind == kind).EndedMs : null;
        RunEvent[] events = [.. book.Events.Where(e => until is null || e.AtMs <= until)];
        return Exercises.Judge(exercise, RunFold.Of(events), Debriefing.Of(events)!);
    }

    private void Strike(Session session, params KeyName[] keys)
    {
        foreach (var key in keys)
            session.Receive(new Input.Key(new KeyStroke(key)), _now = _now.AddSeconds(5));
    }
}
