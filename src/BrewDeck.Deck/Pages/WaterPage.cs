using BrewDeck.Core.Waters;
using BrewDeck.Deck.Asks;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.WaterMaking;

namespace BrewDeck.Deck.Pages;

/// <summary>A water by its analysis and what stands on the shelf beside it, being made or changed.</summary>
internal sealed class WaterPage : ListPage
{
    private readonly IProfileWriter _writer;
    private readonly Action<WaterSupply> _kept;
    private readonly Stack<WaterSupply> _before = new();
    private ProfileEntry? _entry;
    private WaterSupply _water;
    private WaterSupply _saved;

    /// <param name="entry">The file that is changed; null: a new one is written.</param>
    /// <param name="kept">Called with the water each time it has been saved.</param>
    public WaterPage(Shell shell, IProfileWriter writer, WaterSupply water, ProfileEntry? entry, Action<WaterSupply> kept)
        : base(shell) => (_writer, _water, _saved, _entry, _kept) = (writer, water, water, entry, kept);

    public override KeyContext Context => KeyContext.Water;

    protected override int Count => WaterFields.All.Length;

    private WaterField Row => WaterFields.All[Selected];

    protected override Screen Compose(DateTimeOffset now) => new ListScreen(
        Shell.Notation.Text($"{(_water.Source.Name.Length > 0 ? _water.Source.Name : Shell.Notation.Text("New water"))}{(_water == _saved ? "" : Shell.Notation.Text(", not saved"))}"),
        Corners.Of(Shell, now),
        [new Column("", 0), new Column("", 24, Right: true)],
        [.. WaterFields.All.Select(f => new Row([f.Label(Shell.Notation), f.Show(_water, Shell.Notation)]))],
        Selected,
        WaterFigures.Of(_water, Shell.Notation),
        KeyMap.Hints(Context, Shell.Notation));

    protected override void Choose(int row, DateTimeOffset now) => Change("");

    protected override void Handle(Command command, KeyStroke stroke, DateTimeOffset now)
    {
        switch (command)
        {
            case Command.Change:
                Change("");
                break;
            case Command.PickRow when Row is WaterField.Typed:
                Change(stroke.Character.ToString());
                break;
            case Command.Undo when _before.TryPop(out var before):
                _water = before;
                break;
            case Command.Save:
                Save(now);
                break;
            case Command.Back when _water != _saved:
                AskLeave();
                break;
            default:
                base.Handle(command, stroke, now);
                break;
        }
    }

    private void Change(string typed)
    {
        if (Row is WaterField.Turned turned)
            Set(turned.Next(_water));
        else if (Row is WaterField.Typed field)
            Type(field, typed);
    }

    private void Type(WaterField.Typed field, string typed, Action? then = null) => Ask(new EntryAsk(
        this, field.Question(Shell.Notation), typed, _ => Line.Of(Shell.Notation.Text(field.Hint), Tone.Muted), (text, _) =>
        {
            if (field.Read(_water, text, Shell.Notation, out var fault) is not { } changed)
                return fault;
            Set(changed);
            then?.Invoke();
            return null;
        }));

    private void Set(WaterSupply water)
    {
        _before.Push(_water);
        _water = water;
    }

    private bool Save(DateTimeOffset now)
    {
        if (_water.Source.Name.Length == 0)
        {
            Type(WaterFields.Name, "", () => Save(now));
            return false;
        }
        return Shell.Try(() =>
        {
            _entry = _writer.Write(_water, _entry, now);
            _saved = _water;
            _kept(_water);
            Shell.Say(Shell.Notation.Text($"Saved to {_entry.Path}."));
        });
    }

    private void AskLeave() => Ask(new ChoiceAsk(
        this, Shell.Notation.Text("Leave this water?"), [Line.Of(Shell.Notation.Text("It is not saved yet."))],
        [new Row([Shell.Notation.Text("Save it and leave")]), new Row([Shell.Notation.Text("Stay")]), new Row([Shell.Notation.Text("Leave it as it was")])],
        (row, at) =>
        {
            if (row == 2 || (row == 0 && Save(at)))
                Shell.Pop();
        }));
}
