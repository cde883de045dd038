using System.Collections.Immutable;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Training;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>A rehearsed day looked back at: plan against result, and what each choice cost.</summary>
internal sealed class DebriefPage : TextPage
{
    private readonly int _number;
    private readonly IEnumerable<Line> _lines;

    private DebriefPage(Shell shell, int number, IEnumerable<Line> lines)
        : base(shell) => (_number, _lines) = (number, [.. lines]);

    protected override string Title => Shell.Notation.Text($"Debrief of batch {_number}");

    protected override IEnumerable<Line> Lines(DateTimeOffset now) => _lines;

    /// <summary>Brewed again to look back: that takes some seconds.</summary>
    public static void Enter(Shell shell, int number) => Look(shell, number, (_, _) => { });

    /// <summary>The same at the end of an exercise, which is remembered.</summary>
    public static void Judge(Shell shell, int number, DateTimeOffset now) => Look(shell, number, (exercise, judged) =>
        shell.Ports.Exercises?.Keep(exercise.Number, number, judged.All(j => j.Holds), now));

    private static void Look(Shell shell, int number, Action<Exercise, ImmutableArray<Judged>> keep) => shell.Try(() =>
    {
        var events = shell.Ports.Store.Read(number);
        if (shell.Ports.Debrief?.Invoke(events) is not { } debrief)
        {
            shell.Say(shell.Notation.Text("Only rehearsed batches have a debrief."), Tone.Warning);
            return;
        }
        var state = RunFold.Of(events);
        IEnumerable<Line> verdict = [];
        if (Exercises.Find(debrief.Card.Exercise) is { } exercise)
        {
            var judged = Exercises.Judge(exercise, state, debrief);
            verdict = ExerciseWords.Verdict(exercise, judged, shell.Notation);
            keep(exercise, judged);
        }
        shell.Push(new DebriefPage(shell, number, [.. verdict, .. DebriefWords.Lines(debrief, state, Forecasts.At(state, events[^1].AtMs).Outlook, shell.Notation)]));
    });
}
