using BrewDeck.Core.Planning;
using static BrewDeck.Tests.Simulator.HandMadeDay;

namespace BrewDeck.Tests.Simulator;

/// <summary>The hands follow the journal whoever wrote it.</summary>
public sealed class FollowerTests
{
    [Fact]
    public void WhatWentInTwiceByUndoWentInOnce()
    {
        var day = new HandMadeDay(Quayside.Exact());
        var fill = Step("fill", StepKind.Fill, Quayside.Liquor) with { VolumeL = 30 };
        day.Do(fill);
        day.Do(fill);
        Assert.Equal(30, day.Plant[Quayside.Liquor].ColdL, 0.01);
    }

    [Fact]
    public void AFinishedFillIsFull()
    {
        var day = new HandMadeDay(Quayside.Exact());
        day.Begin(Step("fill", StepKind.Fill, Quayside.Liquor) with { VolumeL = 30 });
        day.Hands.Advance(30);
        Assert.InRange(day.Plant[Quayside.Liquor].ColdL, 4, 8);
        day.Hands.Finished("fill");
        Assert.Equal(30, day.Plant[Quayside.Liquor].ColdL, 0.01);
    }

    [Fact]
    public void ASkippedFillStopsWhereItIs()
    {
        var day = new HandMadeDay(Quayside.Exact());
        day.Begin(Step("fill", StepKind.Fill, Quayside.Liquor) with { VolumeL = 30 });
        day.Hands.Advance(30);
        day.Hands.Skipped("fill");
        day.Hands.Advance(300);
        Assert.InRange(day.Plant[Quayside.Liquor].ColdL, 4, 8);
    }

    [Theory]
    [InlineData("whirlpool")]
    [InlineData("stand")]
    [InlineData("cast-out")]
    public void WortThatIsBoiledOnceMoreAfterTheKnockOutDoesNotBoilOn(string next)
    {
        var day = new HandMadeDay(Quayside.Exact());
        day.DoAll(UntilRunOff());
        day.Do(FlySparge());
        var rest = FromBoil();
        day.DoAll(rest.TakeWhile(s => s.Id != "whirlpool"));
        day.Do(Step("once-more", StepKind.Boil, Quayside.Boil) with { Minutes = 9 });
        Assert.False(double.IsNaN(day.Plant.Kettle.SetC));
        day.Begin(rest.First(s => s.Id == next));
        Assert.True(double.IsNaN(day.Plant.Kettle.SetC));
        day.Hands.Advance(60);
        var vapourKg = day.Plant.Ledger.VapourKg;
        day.Hands.Advance(240);
        // a boil would give off some 0.4 kg in four minutes
        Assert.InRange(day.Plant.Ledger.VapourKg - vapourKg, 0, 0.2);
    }

    [Fact]
    public void AHeldRunOffRestsAndGoesOnWithTheLiquorLeft()
    {
        var day = new HandMadeDay(Quayside.Exact());
        day.DoAll(UntilRunOff());
        day.Begin(FlySparge());
        day.Hands.Advance(600);
        day.Hands.Held("lauter");
        var held = day.Plant.Kettle.ColdL;
        day.Hands.Advance(600);
        Assert.Equal(held, day.Plant.Kettle.ColdL, 0.05);
        Assert.False(day.Hands.IsDone("lauter"));
        day.Hands.Resumed("lauter");
        day.WaitFor("lauter");
        Assert.Equal(29.5 - 26, day.Plant[Quayside.Liquor].ColdL, 0.2);
    }

    [Fact]
    public void ARunOffFinishedEarlyIsShort()
    {
        var day = new HandMadeDay(Quayside.Exact());
        day.DoAll(UntilRunOff());
        day.Begin(FlySparge());
        day.Hands.Advance(600);
        day.Hands.Finished("lauter");
        day.Hands.Advance(600);
        Assert.InRange(day.Plant.Kettle.ColdL, 14, 16);
    }

    [Fact]
    public void AHeldRestLastsItsMinutesAfterwards()
    {
        var day = new HandMadeDay(Quayside.Exact());
        day.Begin(Step("boil", StepKind.Stand, Quayside.Boil) with { Minutes = 10 });
        day.Hands.Advance(300);
        day.Hands.Held("boil");
        day.Hands.Advance(900);
        day.Hands.Resumed("boil");
        day.Hands.Advance(290);
        Assert.False(day.Hands.IsDone("boil"));
        day.Hands.Advance(15);
        Assert.True(day.Hands.IsDone("boil"));
    }

    [Fact]
    public void CleaningTheTunLeavesTheBoilAlone()
    {
        var day = new HandMadeDay(Quayside.Exact());
        day.Plant.AddWater(Quayside.Boil, 40, 98);
        day.Plant.FinishPours();
        day.Begin(Step("boil", StepKind.Boil, Quayside.Boil) with { Minutes = 60 });
        day.Do(Step("clean", StepKind.Clean, Quayside.Mash) with { Minutes = 20 });
        Assert.True(day.Plant.Ledger.VapourKg > 1);
    }

    [Fact]
    public void RemediesReachThePlant()
    {
        var day = new HandMadeDay(Quayside.Exact());
        day.DoAll(UntilRest());
        var cool = day.Plant.Tun.TempC;
        day.Do(Step("heat-mash", StepKind.HeatMash, Quayside.Mash) with { TargetC = cool + 3 });
        Assert.Equal(cool + 3, day.Plant.Tun.TempC, 0.3);
        day.Do(Step("cold", StepKind.AddWater, Quayside.Mash) with { VolumeL = 2, TargetC = 12 });
        Assert.InRange(day.Plant.Tun.TempC, cool - 1, cool + 2);
        var dry = new Charge(ChargeKind.Extract, "dried extract", 1, "kg", ExtractKg: 0.96, WaterKg: 0.04);
        day.Plant.AddWater(Quayside.Boil, 30, 90);
        day.Plant.FinishPours();
        day.Do(Step("extract", StepKind.AddExtract, Quayside.Boil) with { Charges = [dry] });
        Assert.Equal(0.96, day.Plant.Kettle.ExtractKg, 1e-9);
    }

    [Fact]
    public void EveryKindOfStepCanBeDone()
    {
        foreach (var kind in Enum.GetValues<StepKind>())
        {
            var day = new HandMadeDay(Quayside.Drawn(9), steadiness: 1);
            day.DoAll(UntilRest());
            var spec = Step("any", kind, VesselOf(kind), Quayside.Boil) with
            {
                TargetC = kind == StepKind.ChillInKettle ? 90 : 70,
                VolumeL = 5,
                SpargeL = 2,
                Minutes = 3,
                HandsS = 60,
            };
            day.Plant.AddWater(Quayside.Boil, 20, 98);
            day.Plant.FillFromTap(Quayside.Liquor, 20, 10);
            day.Plant.FinishPours();
            day.Do(spec);
            Assert.Equal(0, day.Plant.HeatResidualJ, 1.0);
        }
    }

    [Fact]
    public void ATargetThatCannotBeReachedIsGivenUp()
    {
        var day = new HandMadeDay(Quayside.Exact());
        day.Begin(Step("heat", StepKind.HeatStrike, Quayside.Liquor) with { TargetC = 75 });
        day.Hands.Advance(5 * 3600);
        Assert.True(day.Hands.IsDone("heat"));
        Assert.InRange(day.Plant[Quayside.Liquor].TempC, 17, 19);
    }

    private static string VesselOf(StepKind kind) => kind switch
    {
        StepKind.Fill or StepKind.HeatStrike or StepKind.HeatSparge or StepKind.TransferStrike or StepKind.PrimePump => Quayside.Liquor,
        >= StepKind.AddFirstWortHops and <= StepKind.CastOut or StepKind.AddExtract => Quayside.Boil,
        _ => Quayside.Mash,
    };
}
