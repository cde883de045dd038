using System.Collections.Immutable;
using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running;

/// <summary>Keeps the kettle as it was at the ends of lauter and boil, for the outlook and the record.</summary>
internal static class Milestones
{
    /// <param name="ended">A step that was finished or skipped.</param>
    /// <param name="steps">The run sheet with that step closed.</param>
    public static LivePlant After(LivePlant live, StepSpec ended, ImmutableArray<RunStep> steps)
    {
        var kettle = Kettle(live);
        if (ended.Kind.FillsKettle() && !steps.Any(s => s.Open && s.Spec.Kind.FillsKettle()))
            return live with { PreBoil = kettle };
        if (ended.Kind == StepKind.Boil && !steps.Any(s => s.Open && s.Spec.Kind == StepKind.Boil))
            return live with { PostBoil = kettle };
        return live;
    }

    /// <summary>A kettle reading between two milestones belongs to the earlier one.</summary>
    public static LivePlant Corrected(LivePlant live, bool boiling)
    {
        var kettle = Kettle(live);
        if (live.PostBoil is not null)
            return live.Plant.KnockedOutL > 0 ? live : live with { PostBoil = kettle };
        return live.PreBoil is not null && !boiling ? live with { PreBoil = kettle } : live;
    }

    private static VesselState Kettle(LivePlant live) => live.Vessel(live.Setting.Brewhouse.Kettle.Id);
}
