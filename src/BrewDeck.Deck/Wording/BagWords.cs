using BrewDeck.Core.Planning;
using BrewDeck.Core.Running.Bags;

namespace BrewDeck.Deck.Wording;

/// <summary>Bags that are not as planned.</summary>
public static class BagWords
{
    /// <summary>"munich malt 500 g", "Saaz with 3.1 % alpha acid".</summary>
    public static string Of(Bag bag, Notation notation)
    {
        string[] with = [Share(notation.Text("alpha acid"), bag.AlphaFraction, notation), Share(notation.Text("moisture"), bag.MoistureFraction, notation), Share(notation.Text("extract"), bag.ExtractFraction, notation)];
        var shares = string.Join(", ", with.Where(w => w.Length > 0));
        var amount = bag.Amount is { } a ? " " + Amount(bag.Kind, a, notation) : "";
        return bag.Name + amount + (shares.Length > 0 ? notation.Text(" with ") + shares : "");
    }

    public static string Amount(ChargeKind kind, double amount, Notation notation) => kind == ChargeKind.Hop ? notation.Grams(amount) : notation.Mass(amount);

    private static string Share(string name, double? fraction, Notation notation) => fraction is { } f ? $"{notation.Percent(f)} {name}" : "";
}
