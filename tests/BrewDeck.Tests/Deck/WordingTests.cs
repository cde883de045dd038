using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Alarms;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Tests.Deck;

public class WordingTests
{
    public static TheoryData<StepKind> Kinds => [.. Enum.GetValues<StepKind>()];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_kind_of_step_has_a_title_and_something_for_the_hands(StepKind kind)
    {
        var bare = Quayside.Step("x.y", kind, UnitProcedure.Boil, 0, 5, "kettle", 66);
        var step = kind == StepKind.MovePlug ? bare with { Spec = bare.Spec with { To = "kettle", Label = "A" } } : bare;

        var words = StepWords.Of(step, Quayside.Plan);

        Assert.NotEqual("X.y", words.Title);
        Assert.InRange(words.Title.Length, 4, 60);
        Assert.NotEmpty(words.Hands);
        Assert.All(words.Hands, s => Assert.Matches(@"[.:]$", s));
        Assert.DoesNotContain("  ", words.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_danger_has_its_caution()
    {
        foreach (var danger in Enum.GetValues<Cautions>().Where(c => c != Cautions.None))
            Assert.Single(CautionWords.Of(danger, Notation.Metric));
        Assert.Equal(2, CautionWords.Of(Cautions.Scald | Cautions.Caustic, Notation.Metric).Length);
        Assert.Empty(CautionWords.Of(Cautions.None, Notation.Metric));
    }

    [Fact]
    public void Titles_say_the_number_that_matters()
    {
        Assert.Equal("Dough in 8.420 kg grist", Title(Quayside.DoughIn));
        Assert.Equal("Rest at 66 °C: saccharification", Title(Quayside.Rest));
        Assert.Equal("Heat the sparge liquor to 77 °C", Title(Quayside.HeatSparge));
        Assert.Equal("Lauter and sparge to 47.5 L in the kettle", Title(Quayside.Lauter));
    }

    [Fact]
    public void An_addition_is_named_by_what_goes_in()
    {
        var step = Quayside.Boil with
        {
            Spec = Quayside.Spec("boil.add-1", StepKind.AddToBoil, UnitProcedure.Boil) with
            {
                Charges = [new Charge(ChargeKind.Hop, "Fuggle", 61.6, "g"), new Charge(ChargeKind.Other, "finings", 5, "each")],
            },
        };

        Assert.Equal("Add 62 g Fuggle, 5 each finings", Title(step));
    }

    [Fact]
    public void What_moved_is_told_only_where_it_reads_differently()
    {
        Shift[] shifts =
        [
            new("original_gravity_sg", 1.0502, 1.0471),
            new("fermenter_l", 40.01, 40.02),
            new("finish_ms", Moments.At(34_800), Moments.At(35_520)),
        ];

        Assert.Equal("gravity 1.050 -> 1.047, finish 17:40 -> 17:52", FigureWords.Moved(shifts, Notation.Metric));
    }

    [Fact]
    public void An_unknown_figure_still_reads_with_its_unit() =>
        Assert.Equal("lauter flow 1.2 -> 1.3", FigureWords.Moved([new Shift("lauter_flow_lpm", 1.2, 1.3)], Notation.Metric));

    [Theory]
    [InlineData(65.4, 66, "0.6 °C less than reckoned")]
    [InlineData(66.2, 66, "as expected")]
    [InlineData(66.3, 66, "0.3 °C more than reckoned")]
    [InlineData(66, double.NaN, "")]
    public void A_reading_is_held_against_what_was_expected(double value, double expected, string text) =>
        Assert.Equal(text, ReadingWords.Against(ReadingKind.Temperature, value, expected, Notation.Metric));

    [Fact]
    public void The_implausible_is_asked_about_with_its_bounds() => Assert.Equal(
        "71.0 °C is far from what is expected of the mash tun: 40.0 °C to 69.0 °C.",
        ReadingWords.Doubt(new Decision.AskAgain(new Reading(ReadingKind.Temperature, "tun", 71, "71"), 40, 69), Quayside.Brewhouse, Notation.Metric));

    [Fact]
    public void A_gravity_of_a_hot_sample_is_asked_about_with_how_to_type_it() => Assert.EndsWith(
        "Was the sample hot? Then type 1.031@50.",
        ReadingWords.Doubt(new Decision.AskAgain(new Reading(ReadingKind.Gravity, "kettle", 1.031, "1.031"), 1.035, 1.051) { HotSample = true }, Quayside.Brewhouse, Notation.Metric),
        StringComparison.Ordinal);

    [Fact]
    public void Sugar_to_prime_with_is_named_as_on_its_bag() => Assert.Equal("table sugar", FermentWords.Sugar(BrewDeck.Core.Fermenting.PrimingSugar.TableSugar, Notation.Metric));

    [Theory]
    [InlineData(ReadingKind.Ph, 5.9, "mash tun pH 5.90")]
    [InlineData(ReadingKind.Temperature, 65.4, "mash tun temperature 65.4 °C")]
    public void A_reading_names_its_kind_once(ReadingKind kind, double value, string said) =>
        Assert.Equal(said, ReadingWords.One(new Reading(kind, "tun", value, ""), Quayside.Brewhouse, Notation.Metric));

    [Theory]
    [InlineData(65.3, "The enzymes work slower than planned.")]
    [InlineData(69, "The enzymes tire sooner; the wort ferments less.")]
    public void A_mash_that_is_off_says_what_comes_of_it_on_either_side(double celsius, string text) =>
        Assert.Equal(text, AlarmWords.Consequence(new Alarm(AlarmKind.MashOff, "mash.rest-1", celsius, 67), Notation.Metric));

    [Fact]
    public void Remedies_say_what_to_do_and_what_it_costs()
    {
        var heat = new Remedy(RemedyKind.HeatMash, "tun", 4, 4, [], "", [], [new Shift("original_gravity_sg", 1.047, 1.050)]);

        Assert.Equal("Heat the mash for 4 min", RemedyWords.Title(heat, Quayside.Brewhouse, Notation.Metric));
        Assert.Equal("4 min more", RemedyWords.Cost(heat, Notation.Metric));
        Assert.Equal("gravity 1.047 -> 1.050", RemedyWords.Gives(heat, Notation.Metric));
        Assert.Equal("takes no time", RemedyWords.Cost(heat with { Minutes = 0 }, Notation.Metric));
        Assert.Equal("8 min less", RemedyWords.Cost(heat with { Minutes = -8 }, Notation.Metric));
    }

    [Fact]
    public void Every_remedy_and_every_kind_of_reading_has_words()
    {
        foreach (var kind in Enum.GetValues<RemedyKind>())
            Assert.NotEqual(Names.Plainly(kind.ToString()), RemedyWords.Title(new Remedy(kind, "tun", 2, 0, [], "", [], []), Quayside.Brewhouse, Notation.Metric));
        foreach (var kind in Enum.GetValues<ReadingKind>())
            Assert.NotEmpty(ReadingWords.HowToType(kind, true, Notation.Metric));
    }

    [Fact]
    public void A_refusal_names_the_number_and_what_would_mend_it()
    {
        var refusal = new Refusal("mash_in_tun", 71.4, 61, "L", [new Mend("smaller_batch", 34.2, "L")]);

        Assert.Equal("Mash in the tun: 71.4 L, the limit is 61.0 L.", RefusalWords.Of(refusal, Notation.Metric));
        Assert.Equal("Brew a smaller batch: 34.2 L into the fermenter.", RefusalWords.Mends(refusal, Notation.Metric));
    }

    [Fact]
    public void A_limit_says_what_is_to_spare()
    {
        Assert.Equal("Mash in the tun 33.4 L, at most 61.0 L: 27.6 L to spare", LimitWords.Of(Quayside.Plan.Limits[0], Notation.Metric));
        Assert.Equal("Cover 6.0 L, at least 8.0 L: 2.0 L beyond", LimitWords.Of(new Limit("cover", 6, 8, "L", AtMost: false), Notation.Metric));
    }

    [Fact]
    public void What_was_taken_back_is_named()
    {
        var words = new EventWords(Quayside.Brewhouse, Notation.Metric, id => id);

        Assert.Equal("taken back: mash tun temperature 65.4 °C", words.Of(Moments.Events[4], Moments.Events));
        Assert.Equal("mash tun temperature 65.4 °C (gravity 1.048 -> 1.047, finish 11:10 -> 11:22)", words.Of(Moments.Events[3], Moments.Events));
    }

    private static string Title(PlanStep step) => StepTitles.Of(step, Quayside.Plan, Notation.Metric);

    /// <summary>What is reckoned moves with the day: a level over it may be under the plan.</summary>
    [Fact]
    public void A_reading_is_held_against_the_reckoning_and_apart_from_it_against_the_plan()
    {
        Assert.Equal("0.4 L more than reckoned", ReadingWords.Against(ReadingKind.Volume, 39.7, 39.3, Notation.Metric));
        Assert.Equal("0.3 L under plan", ReadingWords.AgainstPlan(ReadingKind.Volume, 39.7, 40, Notation.Metric));
        Assert.Equal("", ReadingWords.AgainstPlan(ReadingKind.Volume, 40.05, 40, Notation.Metric));
    }

    [Fact]
    public void A_bound_never_reads_as_what_is_outside_it() => Assert.Equal(
        "25.0 °C is far from what is expected of the fermenter: 13.0 °C to 24.9 °C.",
        ReadingWords.Doubt(new(new(ReadingKind.Temperature, "fermenter", 25, "25c"), 12.96, 24.96), Quayside.Brewhouse, Notation.Metric));

    /// <summary>The last rest that converts is the one before the mash-out.</summary>
    [Fact]
    public void Iodine_is_asked_for_before_the_enzymes_are_stopped()
    {
        var rest = Quayside.Rest;
        var mashOut = rest with { Spec = rest.Spec with { Id = "mash.rest-2", TargetC = 76 }, TargetC = 76 };
        var plan = Quayside.Plan with { Steps = [.. Quayside.Plan.Steps.SelectMany(s => s == rest ? new[] { rest, mashOut } : [s])] };

        Assert.Contains(HandsWords.Of(rest, plan, Notation.Metric), s => s.StartsWith("Iodine", StringComparison.Ordinal));
        Assert.DoesNotContain(HandsWords.Of(mashOut, plan, Notation.Metric), s => s.StartsWith("Iodine", StringComparison.Ordinal));
    }

    [Fact]
    public void Dry_hops_are_not_opened_at_the_weigh_in()
    {
        Charge Hop(string name, BrewDeck.Core.Recipes.HopUse use) => new(ChargeKind.Hop, name, 30, "g") { Use = use };
        var step = Quayside.Check with { Spec = Quayside.Spec("setup.weigh", StepKind.WeighIn, UnitProcedure.SetUp) with { Charges = [Hop("Fuggle", BrewDeck.Core.Recipes.HopUse.Boil), Hop("Cascade", BrewDeck.Core.Recipes.HopUse.DryHop)] } };
        var said = string.Join(" ", HandsWords.Of(step, Quayside.Plan, Notation.Metric));

        Assert.Contains("Fuggle", said, StringComparison.Ordinal);
        Assert.DoesNotContain("Cascade", said, StringComparison.Ordinal);
        Assert.Contains("Dry hops stay shut", said, StringComparison.Ordinal);
    }

    [Fact]
    public void A_kettle_alone_has_no_tank_and_no_tun()
    {
        var alone = Quayside.Brewhouse with { Vessels = [Quayside.Brewhouse.Vessels[2]] };
        Assert.Equal("Mash in the tun", LimitWords.Name("mash_in_tun", Notation.Metric, Quayside.Brewhouse));
        Assert.All(new[] { "strike_liquor_in_tank", "mash_in_tun", "mash_covers_elements" }, code => Assert.Contains("kettle", LimitWords.Name(code, Notation.Metric, alone), StringComparison.Ordinal));
    }
}
