using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Bags;
using BrewDeck.Deck.Screens;
using BrewDeck.Tests.Deck;

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

    private double Gravity() => _brewer.Session.Forecast!.Outlook.OriginalGravitySg.P50;

    private static string Kg(double kg) => kg.ToString("0.000", System.Globalization.CultureInfo.InvariantCulture) + " kg";
}
