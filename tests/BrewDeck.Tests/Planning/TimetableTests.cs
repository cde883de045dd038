using BrewDeck.Core.Planning;

namespace BrewDeck.Tests.Planning;

public sealed class TimetableTests
{
    private const int Days = 100;

    [Fact]
    public void No_random_brewhouse_asks_for_two_things_at_once()
    {
        var drawn = 0;
        for (var seed = 1; seed <= 4 * Days && drawn < Days; seed++)
        {
            var (house, recipe, choices) = AnyDay.Of(seed);
            if (Planner.Draw(house, recipe, choices) is not PlanResult.Drawn { Plan: var plan })
                continue;
            Feasible(plan, seed);
            drawn++;
        }
        Assert.Equal(Days, drawn);
    }

    /// <summary>Never two things at once for a vessel, a pair of hands or a shared circuit; no shared circuit but where its plug is.</summary>
    private static void Feasible(Plan plan, int seed)
    {
        var setting = PlantSetting.Of(plan.Brewhouse, plan.Choices);
        NoOverlap(plan.Steps.Where(s => s.Spec.HandsS > 0).Select(s => (s.StartS, s.StartS + s.HandsS)), $"hands of {seed}");
        foreach (var vessel in Enumerable.Range(0, setting.FermenterIndex + 1))
        {
            NoOverlap(
                plan.Steps.Where(s => PlantModel.VesselsOf(setting, s.Spec).Contains(vessel)).Select(s => (s.StartS, s.EndS)),
                $"vessel {vessel} of {seed}");
        }
        foreach (var circuit in setting.Circuits.Where((_, c) => setting.Wiring.IsShared(c)))
        {
            NoOverlap(
                plan.Steps.Where(s => s.Circuit?.Split(", ").Contains(circuit.Id) == true || (s.Spec.Kind == StepKind.MovePlug && s.Spec.Label == circuit.Id))
                    .Select(s => (s.StartS, s.EndS)),
                $"circuit {circuit.Id} of {seed}");
        }
    }

    private static void NoOverlap(IEnumerable<(double From, double To)> spans, string what)
    {
        var ordered = spans.Where(s => s.To > s.From).OrderBy(s => s.From).ToList();
        foreach (var (before, after) in ordered.Zip(ordered.Skip(1)))
            Assert.True(after.From >= before.To - 1e-6, $"{what}: {after.From:F0} before {before.To:F0}");
    }
}
