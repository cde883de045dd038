using BrewDeck.Core.Recipes;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.RecipeMaking;

/// <summary>A number that a recipe asks for: its unit, what can be, and how to write it.</summary>
/// <param name="Unit">Of the limits and of what is handed on.</param>
internal sealed record Asked(Dimension Dimension, string Unit, double Least, double Most, string Example, Phrase Hint)
{
    public static readonly Asked Kg = new(Dimension.Mass, "kg", 0.001, 1000, "5.2 kg", "such as 5.2 kg or 350 g");
    private static readonly Asked Grams = new(Dimension.Mass, "g", 0.01, 50_000, "30 g", "such as 30 g");
    public static readonly Asked Extract = new(Dimension.Fraction, "%", 1, 100, "80 %", "percent, from the maltster's sheet");
    public static readonly Asked Moisture = new(Dimension.Fraction, "%", 0, 95, "4 %", "percent, from the maltster's sheet");
    public static readonly Asked Colour = new(Dimension.Colour, "EBC", 0, 2000, "6 EBC", "such as 6 EBC or 3 SRM");
    public static readonly Asked Alpha = new(Dimension.Fraction, "%", 0, 30, "5.5 %", "percent, as printed on the bag");
    public static readonly Asked MashC = new(Dimension.Temperature, "°C", 20, 85, "66 °C", "of the mash, such as 66 °C");
    public static readonly Asked RestMin = new(Dimension.Time, "min", 1, 720, "60 min", "such as 60 min");
    public static readonly Asked PitchC = new(Dimension.Temperature, "°C", 0, 45, "19 °C", "such as 19 °C");
    public static readonly Asked Attenuation = new(Dimension.Fraction, "%", 10, 100, "76 %", "percent");

    /// <summary>More than anybody throws into a litre in one go: a slip of the unit; common practice, no source.</summary>
    private const double MostHopGPerL = 50;

    public static Asked HopsFor(double litres) => Grams with { Most = MostHopGPerL * litres };

    public static Asked Count(string unit, Notation notation) => new(Dimension.Number, unit, 0.001, 100_000, "5", notation.Text($"in {notation.Name(unit)}, such as 5"));

    public RecipeField.Line Line(string label, string question, Notation notation, Func<Recipe, double, Recipe> with) =>
        new(label, question, notation.Text(Hint), RecipeReaders.Quantity(Dimension, Unit, Least, Most, with, Example));
}
