using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Planning.Operations;
using BrewDeck.Deck;

namespace BrewDeck.Tests.Planning;

/// <summary>A malt's degrees Lovibond come through its EBC into the wort's colour as they were typed.</summary>
public class WortColourTests
{
    private static readonly PlantSetting Setting = PlantSetting.Of(Demo.House, new DayChoices());

    // Morey, Beer's Law letter, Brewing Techniques: grists with their SRM worked from his equation
    [Theory]
    [InlineData("10 lb", "2 °L", "1 lb", "60 °L", 5, 9.99)]
    [InlineData("11 lb", "3 °L", "0 lb", "60 °L", 6, 4.80)]
    public void A_grist_in_degrees_Lovibond_has_the_colour_that_Morey_gives(string pale, string paleColour, string dark, string darkColour, double gallons, double srm)
    {
        var bench = new Workbench(Setting, Demo.Plan().Start);
        bench.Colour(Malt(pale, paleColour));
        bench.Colour(Malt(dark, darkColour));

        var cast = bench.ToState() with { KnockedOutL = gallons * UsUnits.LitresPerGallon };

        Assert.Equal(srm, Colour.SrmFromEbc(WortFigures.ColourEbc(Setting, cast)), 0.02);
    }

    [Fact]
    public void Sugar_without_colour_leaves_it_where_it_is()
    {
        var bench = new Workbench(Setting, Demo.Plan().Start);
        bench.Colour(Malt("4 kg", "7 EBC"));
        var before = WortFigures.ColourEbc(Setting, bench.ToState() with { KnockedOutL = 20 });

        bench.Colour(Malt("1 kg", "0 EBC"));

        Assert.Equal(before, WortFigures.ColourEbc(Setting, bench.ToState() with { KnockedOutL = 20 }), 1e-12);
    }

    private static Charge Malt(string mass, string colour) => new(
        ChargeKind.Grist, "malt", QuantityReader.Read(mass, Dimension.Mass).Value, "kg", ColourEbc: QuantityReader.Read(colour, Dimension.Colour).Value);
}
