using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Bags;
using BrewDeck.Deck.Screens;
using BrewDeck.Tests.Deck;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Running;

/// <summary>Bags that are not as planned, by keys and by the fold.</summary>
public class BagTests
{
    private readonly Player _brewer = new();

    [Fact]
    public void A_short_bag_moves_the_outlook_at_once_and_undo_brings_it_back()
    {
        _brewer.Begin();
        var planned = BagSheet.Of(_brewer.Session.State!).First(b => b.Kind == ChargeKind.Grist);
        var before = Gravity();
        _brewer.Keys("b").Enter().Enter().Line(Kg(planned.Amount * 0.9));
        Assert.Contains("gravity 1.0", string.Concat(Assert.IsType<ChoiceOverlay>(_brewer.Screen.Overlay).Lines.Select(l => l.ToString())), StringComparison.Ordinal);
        Assert.Equal(before, Gravity(), 1e-9);
        _brewer.Enter();

        var share = planned.Amount * planned.ExtractFraction * (1 - planned.MoistureFraction)
            / BagSheet.Of(_brewer.Session.State!).Where(b => b.Kind == ChargeKind.Grist).Sum(b => b.Amount * b.ExtractFraction * (1 - b.MoistureFraction));
        Assert.Contains("gravity 1.0", _brewer.Notice, StringComparison.Ordinal);
        Assert.Contains(" -> ", _brewer.Notice, StringComparison.Ordinal);
        // a tenth less of so much of the extract, in about as much wort
        Assert.InRange((before - Gravity()) / (before - 1), 0.05 * share, 0.14 * share);
        Assert.Equal(planned.Amount * 0.9, BagSheet.Of(_brewer.Session.State!).First(b => b.Name == planned.Name).Amount, 2e-3);

        _brewer.Keys("u");
        Assert.Equal(before, Gravity(), 1e-9);
    }

    [Fact]
    public void Before_the_weigh_in_the_bags_are_those_that_it_lists()
    {
        _brewer.Begin();
        var state = _brewer.Session.State!;
        var listed = state.Plan!.Steps.Single(s => s.Spec.Kind == StepKind.WeighIn).Spec.Charges.Where(c => c.Kind == ChargeKind.Grist);
        Assert.Equal(listed.GroupBy(c => c.Name).ToDictionary(g => g.Key, g => g.Sum(c => c.Amount)),
            BagSheet.Of(state).Where(b => b.Kind == ChargeKind.Grist).ToDictionary(b => b.Name, b => b.Amount));
    }

    /// <summary>A bag of 25 g cannot give 31 g: what is missing comes from the hops of which there is enough.</summary>
    [Fact]
    public void A_short_bag_of_hops_is_made_up_for_by_the_others()
    {
        var day = new PerfectDay(Demo.Plan());
        day.RunUntil("setup.weigh-in");
        PlannedBag Hop(string name) => BagSheet.Of(day.State).Single(b => b.Kind == ChargeKind.Hop && b.Name == name);
        double bitter = Hop("bittering").Amount, aroma = Hop("aroma").Amount;
        day.Accepted(new RunCommand.Weigh(new Bag(ChargeKind.Hop, "bittering", Amount: 0.7 * bitter)));

        var reweigh = day.Offers.First(r => r.Kind == RemedyKind.Reweigh);
        Assert.DoesNotContain(reweigh.Replace.Where(s => s.Kind != StepKind.WeighIn).SelectMany(s => s.Charges), c => c.Name == "bittering");
        day.Accepted(new RunCommand.Choose(reweigh));

        Assert.Equal(0.7 * bitter, Hop("bittering").Amount, 1e-9);
        Assert.True(Hop("aroma").Amount > 1.1 * aroma);
    }

    [Fact]
    public void A_stronger_hop_moves_the_bitterness_in_proportion()
    {
        _brewer.Begin();
        var hops = BagSheet.Of(_brewer.Session.State!).Where(b => b.Kind == ChargeKind.Hop).ToList();
        var before = _brewer.Session.Forecast!.Outlook.BitternessIbu.P50;
        var decision = _brewer.Session.Act(new RunCommand.Weigh(new Bag(ChargeKind.Hop, hops[0].Name, AlphaFraction: 1.2 * hops[0].AlphaFraction)), _brewer.Now);

        Assert.IsType<Decision.Accepted>(decision);
        var after = _brewer.Session.Forecast!.Outlook.BitternessIbu.P50;
        Assert.InRange(after / before, hops.Count == 1 ? 1.17 : 1.02, 1.201);
    }

    [Theory]
    [InlineData("90 kg")]
    [InlineData("3 L")]
    [InlineData("0")]
    public void A_bag_that_cannot_be_is_refused_in_one_line(string typed)
    {
        _brewer.Begin().Keys("b").Enter().Enter().Line(typed);

        Assert.NotNull(Assert.IsType<EntryOverlay>(_brewer.Screen.Overlay).Fault);
        Assert.DoesNotContain(_brewer.Session.State!.Steps, s => s.Spec.Charges.Any(c => c.Amount <= 0));
    }

    [Fact]
    public void What_is_in_the_mash_is_no_bag_any_more()
    {
        _brewer.Begin();
        var malt = BagSheet.Of(_brewer.Session.State!).First(b => b.Kind == ChargeKind.Grist);
        _brewer.RunUntil(s => s.Steps.Any(x => x.Spec.Kind == StepKind.Rest && x.Status == RunStatus.Running));

        Assert.Equal(new Decision.Refused("bag_in_already"), _brewer.Session.Act(new RunCommand.Weigh(new Bag(malt.Kind, malt.Name, 1)), _brewer.Now));
    }

    /// <summary>Grams typed for kilograms were taken by the next Enter.</summary>
    [Theory]
    [InlineData(0.09, "Nine tenths missing?")]
    [InlineData(0.46, "More than half of it missing?")]
    [InlineData(3, "3 times as much?")]
    public void A_bag_far_from_the_plan_is_asked_about_in_words_and_typed_again_by_enter(double share, string words)
    {
        _brewer.Begin();
        var planned = BagSheet.Of(_brewer.Session.State!).First(b => b.Kind == ChargeKind.Grist);
        _brewer.Keys("b").Enter().Enter().Line(Kg(planned.Amount * share));
        Assert.EndsWith(words, _brewer.Question, StringComparison.Ordinal);

        _brewer.Enter();

        Assert.IsType<EntryOverlay>(_brewer.Screen.Overlay);
        Assert.DoesNotContain(_brewer.Store[1], e => e is BagWeighed);
        _brewer.Line(Kg(planned.Amount * 0.6)).Enter();
        Assert.Single(_brewer.Store[1].OfType<BagWeighed>());
    }

    [Fact]
    public void A_bag_that_is_typed_again_has_moved_nothing()
    {
        _brewer.Begin().Keys("b").Enter().Enter().Line("1 kg").Down().Enter();

        Assert.IsType<EntryOverlay>(_brewer.Screen.Overlay);
        Assert.DoesNotContain(_brewer.Store[1], e => e is BagWeighed);
    }

    /// <summary>Less cold malt in the same liquor: it must be less hot, while it heats and when it is held.</summary>
    [Theory]
    [InlineData(RunStatus.Running)]
    [InlineData(RunStatus.Complete)]
    public void A_short_bag_lowers_the_strike(RunStatus heating)
    {
        var day = new PerfectDay(Demo.Plan());
        day.RunUntil(s => s.Step("liquor.heat-strike")!.Status == heating);
        var before = StrikeC(day);
        var malt = BagSheet.Of(day.State).First(b => b.Kind == ChargeKind.Grist);
        var lost = 0.25 * malt.Amount;
        day.Accepted(new RunCommand.Weigh(new Bag(malt.Kind, malt.Name, malt.Amount - lost)));

        var litres = day.State.Step("mash.transfer")!.Spec.VolumeL!.Value;
        // malt at 20 °C or so takes about 0.4 times the heat of as much water, common practice, no source
        Assert.InRange(before - StrikeC(day), 0.3 * lost / litres * 46, 0.6 * lost / litres * 46);
    }

    [Fact]
    public void A_short_bag_can_be_met_by_a_smaller_batch_before_the_mash()
    {
        var day = new PerfectDay(Demo.Plan());
        day.RunUntil("setup.weigh-in");
        var malt = BagSheet.Of(day.State).First(b => b.Kind == ChargeKind.Grist);
        Assert.Empty(day.Offers);
        day.Accepted(new RunCommand.Weigh(new Bag(malt.Kind, malt.Name, 0.75 * malt.Amount)));

        var less = Assert.Single(day.Offers, r => r.Kind == RemedyKind.RunOffLess);
        day.Accepted(new RunCommand.Choose(less));
        day.RunToEnd();

        var made = day.Vessel("fermenter");
        Assert.Equal(day.State.Plan!.Totals.OriginalGravitySg, SugarSolution.SgFromPlato(made.Plato), 0.001);
        Assert.InRange(Contents.CoolL(made) / day.State.Plan.Totals.FermenterL, 0.7, 0.9);
    }

    private static double StrikeC(PerfectDay day)
    {
        var live = day.State.Live!.CutAt(day.State.SecondsAt(day.NowMs));
        return BrewDeck.Core.Planning.Operations.Strike.TemperatureC(new(live.Setting, live.Plant), day.State.Step("liquor.heat-strike")!.Spec);
    }

    private double Gravity() => _brewer.Session.Forecast!.Outlook.OriginalGravitySg.P50;

    private static string Kg(double kg) => kg.ToString("0.000", System.Globalization.CultureInfo.InvariantCulture) + " kg";
}
