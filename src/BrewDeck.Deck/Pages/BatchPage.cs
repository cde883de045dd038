using System.Collections.Immutable;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>A batch's own page: planned against done, readings, remedies, notes.</summary>
internal sealed class BatchPage : TextPage
{
    private readonly int _number;
    private readonly ImmutableArray<Line> _lines = [];
    private readonly bool _open;

    public BatchPage(Shell shell, int number)
        : base(shell)
    {
        _number = number;
        IReadOnlyList<RunEvent> events = [];
        if (!shell.Try(() => events = shell.Ports.Store.Read(number)))
            return;
        var state = RunFold.Of(events);
        _open = state.Status is not (RunStatus.Complete or RunStatus.Aborted);
        _lines = BatchText.Lines(events, state, shell.Notation);
    }

    public override KeyContext Context => _open ? KeyContext.Batch : KeyContext.Text;

    protected override string Title => $"Batch {_number}";

    protected override IEnumerable<Line> Lines(DateTimeOffset now) => _lines;

    protected override void Handle(Command command, KeyStroke stroke, DateTimeOffset now)
    {
        if (command == Command.GoOn)
            Shell.GoOn(_number);
        else
            base.Handle(command, stroke, now);
    }
}
