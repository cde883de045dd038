using System.Collections.Immutable;
using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running;

/// <summary>Keeps the kettle as it was at the ends of lauter and boil, for the outlook and the record.</summary>
internal static class Milestones
{
    public static LivePlant After(LivePlant live, StepSpec ended, ImmutableArray<RunStep> steps)
    {
        var kettle = live.Plant.Vessels[live.Setting.IndexOf(live.Setting.Brewhouse.Kettle.Id)];
        if (ended.Kind.FillsKettle() && LastOf(steps, s => s.Kind.FillsKettle()) == ended.Id)
            return live with { PreBoil = kettle };
        if (ended.Kind == StepKind.Boil && LastOf(steps, s => s.Kind == StepKind.Boil) == ended.Id)
            return live with { PostBoil = kettle };
        return live;
    }

    /// <summary>A kettle reading between two milestones belongs to the earlier one.</summary>
    public static LivePlant Corrected(LivePlant live, bool boiling)
    {
        var kettle = live.Plant.Vessels[live.Setting.IndexOf(live.Setting.Brewhouse.Kettle.Id)];
        if (live.PostBoil is not null)
            return live.Plant.KnockedOutL > 0 ? live : live with { PostBoil = kettle };
        return live.PreBoil is not null && !boiling ? live with { PreBoil = kettle } : live;
    }

    private static string LastOf(ImmutableArray<RunStep> steps, Func<StepSpec, bool> wanted) =>
        steps.Where(s => wanted(s.Spec)).Select(s => s.Spec.Id).LastOrDefault("");
}
