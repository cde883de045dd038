using System.Globalization;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using BrewDeck.Deck;
using BrewDeck.Tests.Planning;
using CsCheck;

namespace BrewDeck.Tests.Laws;

/// <summary>The plan does not depend on the units in which people write.</summary>
public class UnitLaws
{
    private static readonly Gen<double[]> Entries = Gen.Select(
        Gen.Double[62, 69], Gen.Double[30, 44], Gen.Double[6, 9], Gen.Double[1.036, 1.056], Gen.Double[4, 18], Gen.Double[20, 60],
        (rest, batch, malt, gravity, source, hops) => new[] { rest, batch, malt, gravity, source, hops });

    [Fact]
    public void Fahrenheit_gallons_pounds_and_ounces_give_the_plan_of_celsius_litres_and_grams() => Entries.Sample(
        x =>
        {
            var metric = Plan($"{N(x[0])} °C", $"{N(x[1])} L", $"{N(x[2])} kg", N(x[3]), $"{N(x[4])} °C", $"{N(x[5])} g");
            var plato = BrewDeck.Core.Physics.SugarSolution.PlatoFromSg(x[3]);
            var customary = Plan(
                $"{N(x[0] * 9 / 5 + 32)} °F", $"{N(x[1] / 3.785411784)} gal", $"{N(x[2] / 0.45359237)} lb", $"{N(plato)} °P",
                $"{N(x[4] * 9 / 5 + 32)} F", $"{N(x[5] / 28.349523125)} oz");
            Assert.Equal(metric.Totals.StrikeWaterL, customary.Totals.StrikeWaterL, 0.0001);
            Assert.Equal(metric.Totals.OriginalGravitySg, customary.Totals.OriginalGravitySg, 1e-6);
            Assert.Equal(metric.Totals.BitternessIbu, customary.Totals.BitternessIbu, 1e-4);
            Assert.Equal(metric.Totals.DayS, customary.Totals.DayS, 0.1);
            foreach (var (one, other) in metric.Steps.Zip(customary.Steps))
            {
                Assert.Equal(one.Spec.Id, other.Spec.Id);
                Assert.Equal(one.TargetC ?? 0, other.TargetC ?? 0, 1e-3);
            }
        },
        iter: 25);

    private static Plan Plan(string rest, string batch, string malt, string gravity, string source, string hops) => Demo.Plan(
        Demo.Amber with
        {
            OriginalGravitySg = Read(gravity, Dimension.Gravity),
            BitternessIbu = null,
            Grist = [Demo.Amber.Grist[0] with { MassKg = Read(malt, Dimension.Mass) }],
            Rests = [new MashRest("rest", Read(rest, Dimension.Temperature), 60)],
            Hops = [Demo.Amber.Hops[0] with { MassG = 1000 * Read(hops, Dimension.Mass) }],
        },
        new DayChoices { BatchL = Read(batch, Dimension.Volume), SourceWaterC = Read(source, Dimension.Temperature) });

    private static double Read(string text, Dimension dimension)
    {
        var read = QuantityReader.Read(text, dimension);
        Assert.True(read.Ok, read.Why);
        return read.Value;
    }

    private static string N(double value) => value.ToString("0.##########", CultureInfo.InvariantCulture);
}
