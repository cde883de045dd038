using BrewDeck.Core.Planning;
using BrewDeck.Simulator.Plant;

namespace BrewDeck.Tests.Simulator;

public sealed class LauterTests
{
    private const double AvailableKg = 7.68 * 0.96;

    [Theory]
    [InlineData(11)]
    [InlineData(12)]
    [InlineData(13)]
    [InlineData(14)]
    [InlineData(15)]
    public void AFlySpargeGivesAPlausibleShare(int seed) => Assert.InRange(Yield(new HandMadeDay(Quayside.Drawn(seed))), 0.70, 0.96);

    [Fact]
    public void MoreLiquorLeavesLessInTheGrain()
    {
        var yields = new[] { 5.0, 10, 15, 20, 25 }.Select(l => Yield(new HandMadeDay(Quayside.Exact()), l)).ToList();
        Assert.All(yields.Zip(yields.Skip(1)), pair => Assert.True(pair.Second > pair.First));
    }

    [Fact]
    public void ASpargeBeatsNoneAndFlyBeatsBatch()
    {
        var none = Yield(new HandMadeDay(Quayside.Exact()), 0);
        var fly = Yield(new HandMadeDay(Quayside.Exact()), 24);
        var day = new HandMadeDay(Quayside.Exact());
        day.DoAll(HandMadeDay.UntilRunOff());
        day.DoAll(BatchSparge());
        var batch = day.Plant.Kettle.ExtractKg / AvailableKg;
        Assert.True(none < batch && batch < fly, $"{none:0.000} {batch:0.000} {fly:0.000}");
    }

    [Fact]
    public void TheValveClosesAtTheMarkOfTheSightGlass()
    {
        var day = new HandMadeDay(Quayside.Exact());
        day.DoAll(HandMadeDay.UntilRunOff());
        day.Do(HandMadeDay.FlySparge(untilL: 40, spargeL: 26));
        Assert.Equal(40, day.Plant.Kettle.ColdL, 0.4);
        var before = day.Plant.Kettle.LiquidKg;
        day.Plant.Advance(600);
        Assert.InRange(day.Plant.Kettle.LiquidKg, before - 0.1, before);
    }

    [Fact]
    public void ADryBedEndsTheRunOffWithWhatTheGrainKeeps()
    {
        var day = new HandMadeDay(Quayside.Exact());
        day.DoAll(HandMadeDay.UntilRunOff());
        day.Do(HandMadeDay.Step("first", StepKind.RunOff, Quayside.Mash, Quayside.Boil));
        Assert.Equal(10 * 1.0 + 1, day.Plant.Tun.ColdL, 0.2);
    }

    /// <summary>The mapping of stages, stated in <see cref="GrainBed"/>, against a row of ideal stages written out here.</summary>
    [Fact]
    public void TheProfilesStagesGiveAboutTheSameDrainedYield()
    {
        var errors = (from stages in new[] { 1, 2, 3, 4 }
                      from washed in new[] { 0.4, 0.8, 1.1 }
                      select LeftInBed(stages, washed) - LeftInStages(stages, washed)).ToList();
        Assert.InRange(errors.Average(), -0.01, 0.01);
        Assert.InRange(Math.Sqrt(errors.Average(e => e * e)), 0, 0.015);
    }

    [Fact]
    public void RunningsGetThinner()
    {
        var bed = Bed(3);
        var last = double.MaxValue;
        for (var i = 0; i < 300; i++)
        {
            var (water, extract) = bed.Run(0.125, 0.125, 5);
            Assert.True(extract / (water + extract) <= last + 1e-9);
            last = extract / (water + extract);
        }
        Assert.InRange(last, 0, 0.08);
    }

    public static StepSpec[] BatchSparge() =>
    [
        HandMadeDay.Step("first", StepKind.RunOff, Quayside.Mash, Quayside.Boil),
        HandMadeDay.Step("sparge", StepKind.BatchSparge, Quayside.Mash) with { SpargeL = 24, Minutes = 15 },
        HandMadeDay.Step("second", StepKind.RunOff, Quayside.Mash, Quayside.Boil),
    ];

    private static double Yield(HandMadeDay day, double spargeL = 24)
    {
        day.DoAll(HandMadeDay.UntilRunOff());
        day.Do(HandMadeDay.FlySparge(untilL: 75, spargeL));
        return day.Plant.Kettle.ExtractKg / AvailableKg;
    }

    private const double WaterKg = 30;
    private const double ExtractKg = 6.5;
    private static readonly double _liquidL = BedLayer.Litres(WaterKg, ExtractKg);

    private static GrainBed Bed(double stages)
    {
        var habits = Quayside.Brewhouse.Habits with { SpargeStages = stages };
        var bed = new GrainBed();
        bed.Settle(WaterKg, ExtractKg, 10, 1, Quayside.Exact(Quayside.Brewhouse with { Habits = habits }).Bed, 1.5);
        return bed;
    }

    private static double LeftInBed(int stages, double washed)
    {
        var bed = Bed(stages);
        var gone = 0.0;
        for (var litres = 0.0; litres < washed * _liquidL; litres += 0.125)
            gone += bed.Run(0.125, 0.125, 5).ExtractKg;
        while (bed.FreeL > 0.02)
            gone += bed.Run(0.125, 0, 5).ExtractKg;
        return 1 - gone / ExtractKg;
    }

    /// <summary>Ideal stages in a row, washed by small steps; then what drains leaves at the strength that the last stage has to the mean.</summary>
    private static double LeftInStages(int stages, double washed)
    {
        const int Steps = 20_000;
        var strength = Enumerable.Repeat(1.0, stages).ToArray();
        var share = washed * stages / Steps;
        for (var k = 0; k < Steps; k++)
        {
            for (var i = stages - 1; i > 0; i--)
                strength[i] += share * (strength[i - 1] - strength[i]);
            strength[0] -= share * strength[0];
        }
        var mean = strength.Average();
        return mean * Math.Pow(11 / _liquidL, strength[^1] / mean);
    }
}
