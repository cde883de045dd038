using System.Collections.Immutable;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>A rehearsed day looked back at: plan against result, and what each choice cost.</summary>
internal sealed class DebriefPage : TextPage
{
    private readonly int _number;
    private readonly ImmutableArray<Line> _lines;

    private DebriefPage(Shell shell, int number, Debrief debrief)
        : base(shell) => (_number, _lines) = (number, DebriefWords.Lines(debrief, shell.Notation));

    protected override string Title => $"Debrief of batch {_number}";

    protected override IEnumerable<Line> Lines(DateTimeOffset now) => _lines;

    /// <summary>Brewed again to look back: that takes some seconds.</summary>
    public static void Enter(Shell shell, int number) => shell.Try(() =>
    {
        IReadOnlyList<RunEvent> events = shell.Ports.Store.Read(number);
        if (shell.Ports.Debrief?.Invoke(events) is { } debrief)
            shell.Push(new DebriefPage(shell, number, debrief));
        else
            shell.Say("There is a debrief of rehearsed batches only.", Tone.Warning);
    });
}
