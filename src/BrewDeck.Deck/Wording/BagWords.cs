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

    /// <summary>"nine tenths missing?", "3 times as much?": what an amount that is far from the planned one would mean; null: it is not that far.</summary>
    public static string? Far(double amount, double planned, Notation notation)
    {
        if (planned <= 0 || (amount >= FarLess * planned && amount <= FarMore * planned))
            return null;
        return amount > planned
            ? notation.Text($"{notation.Number(amount / planned, "0.#")} times as much?")
            : (int)Math.Round(10 * (1 - amount / planned)) switch
            {
                5 => notation.Text("more than half of it missing?"),
                6 => notation.Text("six tenths missing?"),
                7 => notation.Text("seven tenths missing?"),
                8 => notation.Text("eight tenths missing?"),
                9 => notation.Text("nine tenths missing?"),
                _ => notation.Text("all but a little missing?"),
            };
    }

    /// <summary>Shares of the planned amount: a bag so far from it is a slip of the unit or of a digit first; common practice, no source.</summary>
    private const double FarLess = 0.5, FarMore = 2;

    /// <summary>"34 g + 34 g": as the doses are weighed, whose sum may round to another number; of malt the whole.</summary>
    public static string Amount(PlannedBag bag, Notation notation) =>
        bag.Kind == ChargeKind.Hop ? string.Join(" + ", bag.Doses.Select(d => Amount(bag.Kind, d, notation))) : Amount(bag.Kind, bag.Amount, notation);

    public static string Amount(ChargeKind kind, double amount, Notation notation) => kind == ChargeKind.Hop ? notation.Grams(amount) : notation.Mass(amount);

    private static string Share(string name, double? fraction, Notation notation) => fraction is { } f ? $"{notation.Percent(f)} {name}" : "";
}
