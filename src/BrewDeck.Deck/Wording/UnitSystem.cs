namespace BrewDeck.Deck.Wording;

/// <summary>Units that people see; records always keep the canonical ones.</summary>
public enum UnitSystem
{
    Metric,
    Us,
}
