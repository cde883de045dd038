using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;
using static BrewDeck.SystemTests.Sessions.AtTheKeys;

namespace BrewDeck.SystemTests.Sessions;

/// <summary>Every key of the deck does what the key table says. A key without a story here fails.</summary>
public sealed class EachKeyTests : IDisposable
{
    private readonly AtTheKeys _at = new();

    public EachKeyTests()
    {
        var brewer = new BrewerByKeys(_at, Space, BrewerByKeys.Decimal);
        brewer.Begin(ImportedRecipe.Name, _at.DownTo, () => _at.Strike(Space, null), Space);
        brewer.Until(StepKind.Rest);
        brewer.Until(_ => _at.Session.Focus!.Act == FocusAct.Wait);
    }

    public void Dispose() => _at.Dispose();

    [Fact]
    public void Each_key_of_the_deck()
    {
        foreach (var binding in KeyMap.Table.Where(b => b.Where.HasFlag(KeyContext.Deck)))
        {
            foreach (var stroke in binding.Strokes)
            {
                if (binding.Command == Command.Undo)
                    _at.Strike("n").Line("to be taken back");
                _at.Strike(Sent(stroke));
                Check(binding.Command);
                BackToTheDeck();
            }
        }
    }

    private void Check(Command command)
    {
        var screen = _at.Session.Screen;
        switch (command)
        {
            case Command.GoOn:
                Assert.Contains("early?", screen.Overlay!.Question, StringComparison.Ordinal);
                break;
            case Command.Reading:
                Assert.Matches("^[0-9]$", Assert.IsType<EntryOverlay>(screen.Overlay).Initial);
                break;
            case Command.OtherReading:
                Assert.Equal("Which reading?", Assert.IsType<ChoiceOverlay>(screen.Overlay).Question);
                break;
            case Command.Note:
                Assert.Equal("Note", screen.Overlay!.Question);
                break;
            case Command.Skip:
                _at.Line("no");
                Assert.Contains("Type the word skip", Assert.IsType<EntryOverlay>(_at.Session.Screen.Overlay).Fault!.ToString(), StringComparison.Ordinal);
                break;
            case Command.Abort:
                _at.Line("yes");
                Assert.Contains("Type the word abort", Assert.IsType<EntryOverlay>(_at.Session.Screen.Overlay).Fault!.ToString(), StringComparison.Ordinal);
                break;
            case Command.Hold:
                Assert.IsType<StepHeld>(_at.Events[^1]);
                _at.Strike("h");
                Assert.IsType<StepResumed>(_at.Events[^1]);
                break;
            case Command.Undo:
                Assert.IsType<Undone>(_at.Events[^1]);
                break;
            case Command.Remedies:
                Assert.Equal("Nothing is off plan that a remedy would mend; f reports what no reading shows.", screen.Notice!.ToString());
                break;
            case Command.Trouble:
                Assert.Equal("What is wrong?", Assert.IsType<ChoiceOverlay>(screen.Overlay).Question);
                break;
            case Command.Weigh:
                Assert.Equal("Which bag?", Assert.IsType<ChoiceOverlay>(screen.Overlay).Question);
                break;
            case Command.Acknowledge:
                Assert.Equal("No alarm waits to be heard.", screen.Notice!.ToString());
                break;
            case Command.Alarms:
                Assert.Equal("Alarms", screen.Title);
                break;
            case Command.Charts:
                Assert.StartsWith("Charts", Assert.IsType<ChartScreen>(screen).Title, StringComparison.Ordinal);
                break;
            case Command.RunSheet:
                Assert.StartsWith("Run sheet", screen.Title, StringComparison.Ordinal);
                break;
            case Command.Reckoner:
                Assert.Equal("Reckoner", screen.Title);
                break;
            case Command.Help:
                Assert.Equal("Keys", screen.Title);
                break;
            case Command.WipeLock:
                var before = _at.Record.Count;
                _at.Strike(Space).Strike("u").Strike("x").Strike("d").Strike("r").Strike("y");
                Assert.Equal(before, _at.Record.Count);
                Assert.DoesNotContain("locked", _at.Text, StringComparison.Ordinal);
                break;
            case Command.Back:
                Assert.Equal("BrewDeck", screen.Title);
                _at.Strike(Enter);
                break;
            default:
                Assert.Fail($"{command} has no story");
                break;
        }
    }

    private void BackToTheDeck()
    {
        if (_at.Session.Screen.Overlay is not null || _at.Session.Screen is not DeckScreen)
            _at.Strike(Escape);
        Assert.Null(Assert.IsType<DeckScreen>(_at.Session.Screen).Overlay);
    }

    private static string Sent(BrewDeck.Deck.KeyStroke stroke) => stroke.Name switch
    {
        BrewDeck.Deck.KeyName.Character => stroke.Character.ToString(),
        BrewDeck.Deck.KeyName.Space => Space,
        BrewDeck.Deck.KeyName.Enter => Enter,
        BrewDeck.Deck.KeyName.Escape => Escape,
        BrewDeck.Deck.KeyName.Backspace => "\u007f",
        var other => throw new NotSupportedException(other.ToString()),
    };
}
