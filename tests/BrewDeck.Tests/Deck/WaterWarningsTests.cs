using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using BrewDeck.Core.Waters;
using BrewDeck.Deck.Wording;
using BrewDeck.Tests.Planning;
using BrewDeck.Tests.Waters;

namespace BrewDeck.Tests.Deck;

/// <summary>What is wrong with the water is told where the brewer looks, with what really mends it.</summary>
public class WaterWarningsTests
{
    private static readonly SourceWater Hard = new("hard", new(130, 15, 25, 20, 20, 400), 7.5);

    private static readonly DayChoices Sour = new()
    {
        Water = Given.Supply(Hard, acid: Given.Lactic),
        WaterTarget = new() { MashPh = 5.3, SpargePh = 5.5 },
    };

    private static WaterWarning[] Warned(DayChoices choices) => [.. WaterWarnings.Of(Demo.Plan(choices: choices), Notation.Metric)];

    [Fact]
    public void Lactate_that_is_tasted_stands_above_all_figures_with_what_mends_it()
    {
        var plan = Demo.Plan(choices: Sour);
        var lines = PlanText.Plain(plan, Notation.Metric).Split('\n');

        Assert.Matches(@"^! Lactate in the wort [\d.]+ mg/L, at most 400 mg/L: [\d.]+ mg/L beyond\.$", lines[1]);
        Assert.Equal("  Use phosphoric acid, or put soft water on the shelf.", lines[2]);
        Assert.StartsWith("**! Lactate in the wort", PlanText.Markdown(plan, Notation.Metric).Split('\n')[2], StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_said_to_mend_the_lactate_does()
    {
        var phosphoric = Sour with { Water = Given.Supply(Hard, acid: new(AcidKind.Phosphoric, 0.75)) };
        var soft = Sour with { Water = Given.Supply(Hard, SourceWater.Distilled, Given.Lactic) };

        Assert.Contains(Warned(Sour), w => w.Says.StartsWith("Lactate", StringComparison.Ordinal));
        Assert.All([phosphoric, soft], c => Assert.DoesNotContain(Warned(c), w => w.Says.StartsWith("Lactate", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_water_with_too_much_of_something_is_diluted()
    {
        var salty = Hard with { Ions = new(80, 5, 10, 300, 20, 100) };
        var target = Given.Pale with { MashPh = null };
        DayChoices With(SourceWater? soft) => Sour with { Water = Given.Supply(salty, soft, Given.Lactic), WaterTarget = target };

        var warning = Assert.Single(Warned(With(null)), w => w.Says.StartsWith("Chloride", StringComparison.Ordinal));
        Assert.Equal("Put soft water on the shelf, and choose a water target with less of it.", warning.Mend);
        Assert.DoesNotContain(Warned(With(SourceWater.Distilled)), w => w.Says.StartsWith("Chloride", StringComparison.Ordinal));
    }

    [Fact]
    public void A_mash_pH_that_is_beyond_without_a_target_asks_for_one()
    {
        var none = Sour with { WaterTarget = null };

        Assert.Equal(["Choose a water target."], Warned(none).Select(w => w.Mend));
        Assert.StartsWith("Predicted mash pH", Warned(none)[0].Says, StringComparison.Ordinal);
        Assert.DoesNotContain(Warned(none with { WaterTarget = new() { MashPh = 5.4 } }), w => w.Says.StartsWith("Predicted mash pH", StringComparison.Ordinal));
    }

    [Fact]
    public void Nothing_can_take_a_mash_to_its_pH_that_is_not_there()
    {
        var bare = new WaterSupply { Source = Hard };

        Assert.Equal(["Put acid or soft water on the shelf, and choose a water target."], Warned(new() { Water = bare }).Select(w => w.Mend));
        Assert.Equal(["Put acid or soft water on the shelf."], Warned(new() { Water = bare, WaterTarget = Sour.WaterTarget }).Select(w => w.Mend));
    }

    /// <summary>With an analysis the salts of the recipe would go in beside those that the target asks for.</summary>
    [Theory]
    [InlineData("Gypsum (mash)", true)]
    [InlineData("calcium chloride", true)]
    [InlineData("Gips", true)]
    [InlineData("Salz", true)]
    [InlineData("Irish moss", false)]
    [InlineData("lime zest", false)]
    public void Salts_of_the_recipe_that_are_not_reckoned_are_told(string name, bool told)
    {
        var recipe = Demo.Amber with { Others = [new OtherAddition(name, 4, "g", AdditionUse.Mash, 0)] };
        var good = Given.Supply(soft: SourceWater.Distilled, acid: Given.Lactic);
        string[] Said(DayChoices choices) => [.. WaterWarnings.Of(Demo.Plan(recipe, choices), Notation.Metric).Where(w => w.Says.Contains(name, StringComparison.Ordinal)).Select(w => w.Mend)];

        Assert.Equal(told ? ["Take them out of the recipe, or leave the water target out."] : [], Said(new() { Water = good, WaterTarget = Given.Pale }));
        Assert.Equal(told ? ["Take them out of the recipe, and choose a water target."] : [], Said(new() { Water = good }));
        Assert.Empty(Said(new()));
    }

    [Fact]
    public void A_water_within_its_limits_says_nothing() => Assert.Empty(Warned(new()
    {
        Water = Given.Supply(soft: SourceWater.Distilled, acid: Given.Lactic),
        WaterTarget = Given.Pale,
    }));
}
