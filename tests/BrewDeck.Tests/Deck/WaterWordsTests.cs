using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Waters;
using BrewDeck.Deck.Wording;
using BrewDeck.Tests.Planning;
using BrewDeck.Tests.Waters;

namespace BrewDeck.Tests.Deck;

public class WaterWordsTests
{
    [Fact]
    public void The_treating_step_says_what_goes_in_and_acid_brings_its_caution()
    {
        var step = Quayside.Step("liquor.treat", StepKind.TreatWater, UnitProcedure.HotLiquor, 0, 6, "liquor");
        step = step with
        {
            Spec = step.Spec with
            {
                Charges =
                [
                    new(ChargeKind.Salt, nameof(BrewingSalt.Gypsum), 3.2, "g"),
                    new(ChargeKind.Salt, nameof(BrewingSalt.TableSalt), 0.4, "g"),
                    new(ChargeKind.Acid, nameof(AcidKind.Lactic), 6.3, "mL") { StrengthFraction = 0.8 },
                ],
                Cautions = Cautions.Acid,
            },
        };
        var words = StepWords.Of(step, Quayside.Plan);
        Assert.Equal("3.2 g gypsum, 0.4 g table salt.", words.Hands[0]);
        Assert.Equal("6.3 mL lactic acid 80 %, a little at a time.", words.Hands[2]);
        Assert.Contains("add acid to water", Assert.Single(words.Cautions), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_salt_and_acid_has_its_name()
    {
        var salts = Enum.GetValues<BrewingSalt>();
        Assert.Equal(salts.Length, salts.Select(x => WaterWords.Salt(x, Notation.Metric)).Distinct().Count());
        // run together as in the code: it would have no words
        Assert.All(salts, s => Assert.DoesNotMatch("^[a-z]{14,}$", WaterWords.Salt(s, Notation.Metric)));
        Assert.Equal(["lactic acid", "phosphoric acid"], Enum.GetValues<AcidKind>().Select(x => WaterWords.Acid(x, Notation.Metric)));
    }

    [Fact]
    public void A_plan_tells_its_water_and_its_limits()
    {
        var text = PlanText.Plain(Demo.Plan(choices: new DayChoices
        {
            Water = Given.Supply(soft: SourceWater.Distilled, acid: Given.Lactic),
            WaterTarget = Given.Pale with { SodiumMgPerL = new(0, 10) },
        }), Notation.Metric);
        Assert.Matches(@"mash pH +5\.\d\d predicted, give or take 0\.15", text);
        Assert.Contains("Predicted mash pH", text, StringComparison.Ordinal);
        Assert.Contains("Sulphate in the treated water", text, StringComparison.Ordinal);
        Assert.Matches(@"First \d+\.\d L soft water, the rest from the tap\.", text);
        Assert.Contains(" (sparge liquor)", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Dihydrate", text, StringComparison.Ordinal);
    }

    /// <summary>4.3 meq/L of cations cannot stand against 9.0 of anions: an electrically neutral water has as much of both.</summary>
    [Fact]
    public void An_analysis_that_cannot_balance_is_told_above_its_figures()
    {
        static string Said(WaterSupply supply) => string.Join("\n", WaterWarnings.Lines(Demo.Plan(choices: new DayChoices { Water = supply }), Notation.Metric));
        var odd = Given.Supply() with { Source = new("odd", new WaterIons(60, 8, 15, 30, 250, 180 / WaterIons.BicarbonatePerAlkalinity), 7.5) };

        Assert.Contains("! Cations and anions of the analysis differ by 35", Said(odd), StringComparison.Ordinal);
        Assert.DoesNotContain("anions", Said(Given.Supply()), StringComparison.Ordinal);
    }

    [Fact]
    public void Limits_of_others_are_not_the_waters() => Assert.Null(WaterWords.Limit("mash_in_tun", Notation.Metric));
}
