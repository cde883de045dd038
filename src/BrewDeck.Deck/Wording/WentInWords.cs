using BrewDeck.Core.Running;

namespace BrewDeck.Deck.Wording;

/// <summary>What really went in, in words.</summary>
public static class WentInWords
{
    /// <summary>"5.000 kg"; "left out".</summary>
    public static string Amount(WentIn went, Notation notation) => went.Amount > 0 ? Charges.Amount(went.Charge, notation) : notation.Text("left out");

    /// <summary>As planned; "put in" for what was not.</summary>
    public static string Planned(WentIn went, Notation notation) =>
        went.Planned is { } planned ? Charges.Amount(went.Charge with { Amount = planned }, notation) : notation.Text("not planned");

    /// <summary>"pale ale malt: 5.000 kg went in, planned 6.550 kg."</summary>
    public static string Off(WentIn went, Notation notation) => went switch
    {
        { Amount: <= 0 } => notation.Text($"{Charges.Name(went.Charge, notation)}: left out, planned {Planned(went, notation)}."),
        { Planned: null } => notation.Text($"{Charges.Name(went.Charge, notation)}: {Amount(went, notation)} went in, not planned."),
        _ => notation.Text($"{Charges.Name(went.Charge, notation)}: {Amount(went, notation)} went in, planned {Planned(went, notation)}."),
    };
}
