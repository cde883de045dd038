using BrewDeck.Core.Planning;
using BrewDeck.Core.Running.Ensemble;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Running.Ensemble;

/// <summary>The day is folded for a source from the first unit on that feels it: before it, it must go as stated.</summary>
public class SourceTests
{
    public static TheoryData<string> Houses => ["three vessels", "five vessels"];

    [Theory]
    [MemberData(nameof(Houses))]
    public void No_source_is_felt_before_its_unit(string house)
    {
        var plan = Demo.Plan(house: house == "five vessels" ? Demo.FiveVessels : Demo.House);
        var setting = PlantSetting.Of(plan.Brewhouse, plan.Choices);
        var stated = DayFold.Over(setting, plan.Steps.Select(s => s.Spec), plan.Start);
        var late = Sources.Of(plan).Where(s => s.From > default(UnitProcedure)).ToList();
        Assert.True(late.Count >= 6);
        foreach (var source in late)
        {
            var moved = DayFold.Over(source.OnPlant!(setting, 2 * source.Sd), plan.Steps.Select(s => s.Spec), plan.Start);
            var felt = plan.Steps.TakeWhile(s => s.Spec.Unit < source.From).Count();
            Assert.InRange(felt, 5, plan.Steps.Length - 1);
            for (var i = 0; i < felt; i++)
            {
                Assert.Equal(stated[i].EndS, moved[i].EndS);
                Assert.Equal(stated[i].After.Vessels.AsEnumerable(), moved[i].After.Vessels);
                Assert.Equal(stated[i].After.Hops.AsEnumerable(), moved[i].After.Hops);
            }
            Assert.NotEqual(Came(stated), Came(moved));
        }

        (double, VesselState) Came(IReadOnlyList<PlanStep> day) => (day.Max(s => s.EndS), day[^1].After.Vessels[setting.FermenterIndex]);
    }
}
