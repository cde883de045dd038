using BrewDeck.Core.Running;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Tests.Deck;

/// <summary>What the deck says in the middle of a day, held against the state that it says it of.</summary>
public sealed class DeckWordsTests
{
    [Fact]
    public void A_raise_that_waits_wants_its_own_temperature_and_not_that_of_the_rest_before_it()
    {
        var brewer = new Player().Begin().Until("mash.rest-1").Wait(64 * 60);

        Assert.Equal("mash.ramp-2", brewer.Session.Focus!.StepId);
        Assert.Contains("Expected: temperature 76.0 °C", brewer.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("wanted", brewer.Text, StringComparison.Ordinal);
    }
}
