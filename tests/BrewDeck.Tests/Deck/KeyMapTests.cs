using BrewDeck.Deck;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Tests.Deck;

public class KeyMapTests
{
    private static readonly KeyContext[] Places = [.. Enum.GetValues<KeyContext>().Where(c => c != 0 && (c & (c - 1)) == 0)];

    [Fact]
    public void No_key_asks_for_two_things_in_one_place()
    {
        foreach (var place in Places.Select(Whole))
        {
            var strokes = KeyMap.Table.Where(b => (b.Where & place) != 0).SelectMany(b => b.Strokes).ToList();
            Assert.Equal(strokes.Count, strokes.Distinct().Count());
        }
    }

    // these two stand beside another one
    private static KeyContext Whole(KeyContext place) => place switch
    {
        KeyContext.Rehearsal => place | KeyContext.Deck,
        KeyContext.Kinds => place | KeyContext.Entry,
        _ => place,
    };

    [Fact]
    public void Every_place_can_be_left_and_shows_how()
    {
        foreach (var place in Places.Where(p => p is not (KeyContext.Rehearsal or KeyContext.Kinds)))
            Assert.Contains(KeyMap.Hints(place, Notation.Metric), h => h.Does == "back");
    }

    [Fact]
    public void The_help_says_every_key_of_the_table()
    {
        var help = string.Join("\n", HelpText.Lines(rehearsal: true, Notation.Metric));

        Assert.All(KeyMap.Table, b => Assert.Contains(b.Help.Message, help, StringComparison.Ordinal));
        Assert.DoesNotContain("In a rehearsal", string.Join("\n", HelpText.Lines(rehearsal: false, Notation.Metric)), StringComparison.Ordinal);
    }

    [Fact]
    public void Large_letters_are_the_same_keys() =>
        Assert.Equal(Command.Undo, KeyMap.Find(KeyContext.Deck, KeyStroke.Of('U'))?.Command);

    [Fact]
    public void A_key_without_a_meaning_is_ignored()
    {
        Assert.Null(KeyMap.Find(KeyContext.Deck, KeyStroke.Of('#')));
        Assert.Null(KeyMap.Find(KeyContext.List, KeyStroke.Of('u')));
        Assert.Null(KeyMap.Find(KeyContext.Deck, KeyStroke.Of('+')));
    }

    [Fact]
    public void Digits_open_the_reading_on_the_deck() => Assert.All(
        "0123456789", c => Assert.Equal(Command.Reading, KeyMap.Find(KeyContext.Deck, KeyStroke.Of(c))?.Command));
}
