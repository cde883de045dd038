using System.Text.RegularExpressions;
using BrewDeck.Core.Physics;
using BrewDeck.Deck.Reckoning;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Tests.Deck;

public partial class ReckonerTests
{
    private static readonly Dictionary<string, string> Nothing = [];

    public static TheoryData<string> Names => [.. Sums.All.Select(s => s.Name)];

    [Fact]
    public void Names_are_those_of_options_and_meet_no_second_time()
    {
        Assert.Equal(Sums.All.Length, Sums.All.Select(s => s.Name).Distinct().Count());
        Assert.All(Sums.All, s => Assert.Equal(s.Inputs.Length, s.Inputs.Select(i => i.Name).Distinct().Count()));
        Assert.All(Sums.All.SelectMany(s => s.Inputs.Select(i => i.Name).Append(s.Name)), n => Assert.Matches(Option(), n));
        Assert.All(Sums.All, s => Assert.Equal(Given(s).Length, Given(s).Select(o => o.Name).Distinct().Count()));
        Assert.All(Sums.All.SelectMany(Given), o => Assert.Matches("^[a-z0-9_]+$", o.Name));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Its_own_examples_give_numbers(string name)
    {
        var sum = Sums.Find(name)!;
        var read = SumReader.Read(sum, Examples(sum), Notation.Metric);

        Assert.Null(read.Fault);
        var results = sum.Reckon(read.Values!);
        Assert.Equal(Given(sum).Length, results.Length);
        Assert.All(results, r => Assert.True(double.IsFinite(r)));
        Assert.All(SumLines.About(sum, Notation.Metric), a => Assert.NotEmpty(a.Value));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void What_must_be_given_is_asked_for_by_name(string name)
    {
        var sum = Sums.Find(name)!;
        var first = sum.Inputs.First(i => i.Default is null);
        var read = SumReader.Read(sum, Nothing, Notation.Metric);

        Assert.Equal(first.Name, read.Input);
        Assert.Contains(first.Example, read.Fault, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Nonsense_gets_one_line(string name)
    {
        var sum = Sums.Find(name)!;
        foreach (var input in sum.Inputs)
        {
            var texts = Examples(sum);
            texts[input.Name] = "\u001b[31mbeer\n";
            var read = SumReader.Read(sum, texts, Notation.Metric);
            Assert.Equal(input.Name, read.Input);
            Assert.DoesNotContain(read.Fault!, char.IsControl);
        }
    }

    // worked by hand or from the formulas' own papers, not from this program
    [Theory]
    [InlineData("priming", "volume=20 L;co2=2.4;highest=20 °C;sugar=table-sugar", 0, 117, 2)]
    [InlineData("bitterness", "hops=28.35 g;alpha=6 %;boiled=60 min;gravity=1.050;volume=18.927 L", 0, 20.8, 0.2)]
    [InlineData("alcohol", "original=1.050;final=1.010", 0, 5.25, 0.1)]
    [InlineData("pitch", "volume=20 L;gravity=12 °P", 0, 180, 1)]
    [InlineData("dilution", "volume=40 L;gravity=1.060;target=1.050", 0, 8.0, 0.1)]
    [InlineData("boiling-point", "altitude=1500 m", 0, 95.0, 0.1)]
    [InlineData("keg-pressure", "co2=2.5;temp=3.3 °C", 1, 11.3, 1.0)]
    [InlineData("residual-alkalinity", "alkalinity=178.5;calcium=0", 1, 0.3, 0.001)]
    [InlineData("gravity-scales", "gravity=12 °P", 0, 1.0484, 0.0001)]
    [InlineData("final-gravity", "original=1.050;attenuation=75 %", 0, 1.0125, 0.0001)]
    [InlineData("other-alpha", "hops=1 oz;alpha=10.7 %;bag=5.35 %", 0, 56.7, 0.1)]
    [InlineData("first-wort", "grain=10 kg;extract=80 %;water=30 L", 1, 20.9, 0.2)]
    [InlineData("yield", "grain=10 kg;extract=80 %;volume=50 L;gravity=12 °P", 0, 78.5, 0.2)]
    [InlineData("colour", "malt=11 lb;colour=3 °L;volume=6 gal", 0, 4.80, 0.02)]
    [InlineData("element", "power=5.5 kW;rated=240 V;supply=230 V", 0, 5.05, 0.01)]
    [InlineData("element", "power=5.5 kW;rated=240 V;supply=240 V", 2, 28.6, 0.1)]
    [InlineData("mixing", "volume=30 L;temp=80 °C;other=10 L;other-temp=20 °C", 0, 65, 0.2)]
    [InlineData("emptying", "diameter=40 cm;depth=50 cm;bore=12.7 mm", 0, 8.8, 0.1)]
    [InlineData("heating-time", "volume=50 L;from=20 °C;to=70 °C;power=5 kW;net=100 %;vessel=0 kJ/K;loss=0 W/K", 0, 34.8, 0.2)]
    public void Figures_known_from_elsewhere_come_out(string name, string given, int output, double expected, double within)
    {
        var sum = Sums.Find(name)!;
        var texts = given.Split(';').Select(p => p.Split('=')).ToDictionary(p => p[0], p => p[1]);
        var read = SumReader.Read(sum, texts, Notation.Metric);

        Assert.Null(read.Fault);
        Assert.Equal(expected, sum.Reckon(read.Values!)[output], within);
    }

    // each rule worked from its printed form: 131.25, 136, 1000/7.46 and 133.35 times 0.040; the mean of Rager's table at 60 min is 30 %
    [Theory]
    [InlineData("alcohol", "original=1.050;final=1.010", "abv_rule_percent", 5.25, 1e-9)]
    [InlineData("alcohol", "original=1.050;final=1.010", "abv_rule_136_percent", 5.44, 1e-9)]
    [InlineData("alcohol", "original=1.050;final=1.010", "abv_rule_746_percent", 5.36, 0.01)]
    [InlineData("alcohol", "original=1.050;final=1.010", "abv_rule_105_percent", 5.33, 0.01)]
    [InlineData("alcohol", "original=1.050;final=1.010", "abv_hall_percent", 5.34, 0.01)]
    [InlineData("bitterness", "hops=100 g;alpha=5 %;boiled=60 min;gravity=1.040;volume=50 L", "rager_table_ibu", 30, 1e-9)]
    [InlineData("bitterness", "hops=100 g;alpha=5 %;boiled=60 min;gravity=1.040;volume=50 L", "daniels_whole_ibu", 24, 1e-9)]
    [InlineData("gravity-scales", "gravity=1.040", "rule_259_plato", 9.96, 0.01)]
    [InlineData("gravity-scales", "gravity=1.040", "asbc_plato", 9.99, 0.01)]
    [InlineData("colour", "malt=10 lb;colour=10 °L;volume=5 gal", "daniels_srm", 12.4, 0.01)]
    [InlineData("colour", "malt=10 lb;colour=10 °L;volume=5 gal", "mosher_srm", 10.7, 0.01)]
    [InlineData("strike", "grain=10 lb;water=10 qt;target=152 °F;grain-temp=70 °F", "short_strike_c", 75.8, 0.1)]
    [InlineData("boil-down", "volume=50 L;gravity=1.040;target=1.050;evaporation=4 kg/h", "points_volume_l", 40, 1e-9)]
    [InlineData("dilution", "volume=40 L;gravity=1.060;target=1.050", "points_add_l", 8, 1e-9)]
    public void Other_published_rules_stand_beside_it(string name, string given, string output, double expected, double within)
    {
        var sum = Sums.Find(name)!;
        var texts = given.Split(';').Select(p => p.Split('=')).ToDictionary(p => p[0], p => p[1]);
        var read = SumReader.Read(sum, texts, Notation.Metric);

        Assert.Null(read.Fault);
        Assert.Equal(expected, sum.Reckon(read.Values!)[Given(sum).ToList().FindIndex(o => o.Name == output)], within);
        Assert.Equal(sum.Beside.Length, SumLines.Beside(sum, sum.Reckon(read.Values!), Notation.Metric).Length);
    }

    [Fact]
    public void A_bare_number_is_in_the_brewers_own_units()
    {
        var sum = Sums.Find("boiling-point")!;
        var texts = new Dictionary<string, string> { ["altitude"] = "5000" };

        Assert.Equal(1524, SumReader.Read(sum, texts, Notation.Metric with { Units = UnitSystem.Us }).Values!["altitude"], 1e-6);
        Assert.Equal(5000, SumReader.Read(sum, texts, Notation.Metric).Values!["altitude"], 1e-6);
    }

    [Theory]
    [InlineData("strike", "target", "66.5", "66.5 °F is outside 86 °F to 176 °F")]
    [InlineData("boiling-point", "altitude", "17000", "17000 ft is outside -1312 ft to 16404 ft")]
    [InlineData("pump-flow", "bore", "0.05", "0.05 in is outside 0.12 in to 3.94 in")]
    public void What_is_out_of_range_is_told_in_the_unit_that_was_typed(string name, string input, string typed, string fault)
    {
        var sum = Sums.Find(name)!;
        Assert.Null(SumReader.One(sum.Inputs.First(i => i.Name == input), typed, Notation.Metric with { Units = UnitSystem.Us }, out var said));
        Assert.Equal(fault, said);
    }

    /// <summary>A gravity that rises, a dilution that thickens, a boil that thins: nobody can brew that.</summary>
    [Theory]
    [InlineData("alcohol", "final", "original")]
    [InlineData("dilution", "target", "gravity")]
    [InlineData("boil-down", "gravity", "target")]
    [InlineData("heating-time", "from", "to")]
    public void Two_inputs_the_wrong_way_round_are_refused_and_equal_ones_are_not(string name, string lower, string upper)
    {
        var sum = Sums.Find(name)!;
        Assert.Contains((lower, upper), sum.Orders);
        var texts = Examples(sum);
        (texts[lower], texts[upper]) = (texts[upper], texts[lower]);
        Assert.Contains("write that or less", SumReader.Read(sum, texts, Notation.Metric).Fault, StringComparison.Ordinal);
        texts = Examples(sum);
        texts[lower] = texts[upper];
        Assert.DoesNotContain("write that or less", SumReader.Read(sum, texts, Notation.Metric).Fault ?? "", StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("strike", "grain=10 kg;water=5 L;target=80 °C", "target", "water boils at 100 °C; take [0-9.]+ L liquor or more")]
    [InlineData("heating-time", "to=105 °C", "to", "105 °C is outside -5 °C to 100 °C")]
    [InlineData("infusion", "mash=66 °C;target=72 °C;added=70 °C", "added", "raises no mash to 72.0 °C; take hotter")]
    [InlineData("infusion", "mash=72 °C;target=66 °C", "added", "cools no mash to 66.0 °C; take cold water")]
    [InlineData("strike", "target=154", "target", "did you mean 154f\\?")]
    [InlineData("strike", "target=254", "target", "254 °C is outside 30 °C to 80 °C$")]
    [InlineData("dilution", "gravity=1.04;target=1.05", "target", "^1.050 is above 1.040 ")]
    [InlineData("refractometer", "reading=12p", "reading", "^'12p' is no number in °Bx; write 0 °Bx to 32 °Bx, such as 12.5$")]
    [InlineData("strike", "target=154c", "target", "154 °C is outside 30 °C to 80 °C$")]
    public void What_no_water_can_do_is_refused_with_what_would_mend_it(string name, string given, string input, string why)
    {
        var read = Given(name, given);
        Assert.Equal(input, read.Input);
        Assert.Matches(why, read.Fault!);
    }

    [Fact]
    public void The_liquor_that_is_named_as_enough_boils_no_more_and_a_tenth_of_it_less_would()
    {
        var litres = double.Parse(EnoughL().Match(Given("strike", "grain=10 kg;water=5 L;target=80 °C").Fault!).Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture);
        double Liquor(double l) => MashHeat.StrikeTempC(l * Water.DensityKgPerM3(20) / 1000, 10, 18, Grain.UsualMoistureFraction, 80, 6500, 18);
        Assert.InRange(Liquor(litres), 99, 100);
        Assert.True(Liquor(0.98 * litres) > 100);
    }

    [Fact]
    public void Cold_water_cools_a_mash_by_what_the_two_give_mixed()
    {
        var litres = Reckoned("infusion", ("mash", "70 °C"), ("target", "66 °C"), ("added", "12 °C"));
        var mash = MashHeat.MashHeatCapacityJPerK(27 * Water.DensityKgPerM3(20) / 1000, 9, Grain.UsualMoistureFraction, 68, 6500);
        Assert.Equal(66, MashHeat.AfterInfusionC(mash, 70, litres * Water.DensityKgPerM3(20) / 1000, 12), 0.01);
        Assert.InRange(litres, 2, 3);
    }

    private static SumRead Given(string name, string given)
    {
        var sum = Sums.Find(name)!;
        var texts = Examples(sum);
        foreach (var part in given.Split(';').Select(p => p.Split('=')))
            texts[part[0]] = part[1];
        return SumReader.Read(sum, texts, Notation.Metric);
    }

    [GeneratedRegex("take ([0-9.]+) L liquor")]
    private static partial Regex EnoughL();

    [Fact]
    public void A_pump_gives_less_through_a_longer_hose_and_nothing_beyond_its_head()
    {
        double Flow(string hose, string lift) => Reckoned("pump-flow", ("hose", hose), ("lift", lift));

        Assert.True(Flow("10 m", "0.8 m") < Flow("2 m", "0.8 m"));
        Assert.Equal(0, Flow("2 m", "3.5 m"), 1e-6);
    }

    private static double Reckoned(string name, params (string Input, string Text)[] changed)
    {
        var sum = Sums.Find(name)!;
        var texts = Examples(sum);
        foreach (var (input, text) in changed)
            texts[input] = text;
        return sum.Reckon(SumReader.Read(sum, texts, Notation.Metric).Values!)[0];
    }

    private static SumOutput[] Given(Sum sum) => [.. sum.Outputs, .. sum.Beside];

    private static Dictionary<string, string> Examples(Sum sum) =>
        sum.Inputs.ToDictionary(i => i.Name, i => i.Example.Split(" or ")[0]);

    [GeneratedRegex("^[a-z][a-z0-9-]*$")]
    private static partial Regex Option();
}
