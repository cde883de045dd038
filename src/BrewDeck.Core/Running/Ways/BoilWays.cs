using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Ways;

/// <summary>More steam: stronger, less and more bitter wort. Once the boil is over, it is brought back to the boil.</summary>
internal sealed class BoilLongerWay : Way
{
    /// <summary>At once: then it is measured again, and the rest may follow.</summary>
    private const double LongestMin = 60;

    public override bool Helps(Off off) => off.Kind is OffKind.Wort or OffKind.Missed;

    public override IEnumerable<Remedy> Offers(Weigh weigh, Off off)
    {
        if (weigh.Live.Plant.KnockedOutL > 0)
            return [];
        var aims = Aims.Of(weigh, weigh.Forecast);
        if (!aims.Gravity.Near)
            return aims.Gravity.By < 0 ? OneOf(weigh.MeetingOrNearing(a => a.Gravity, LongestMin, m => Of(weigh, m))) : [];
        if (aims.Volume is { Near: false, By: > 0 })
            return OneOf(weigh.MeetingOrNearing(a => a.Volume, LongestMin, m => Of(weigh, m)));
        return aims.Bitterness is { Near: false, By: < 0 } ? OneOf(weigh.Meeting(a => a.Bitterness, LongestMin, m => Of(weigh, m))) : [];
    }

    /// <summary>The first piece of the boil that is left grows, or one is put before the first addition: additions keep their minutes before knock-out.</summary>
    private static Remedy? Of(Weigh weigh, double minutes)
    {
        if (FirstAddition(weigh.State) is { } addition)
            return Now(weigh, RemedyKind.BoilLonger, minutes, Piece(weigh, minutes, ""), addition.Spec.Id);
        if (weigh.State.Steps.FirstOrDefault(s => s.Open && s.Spec.Kind == StepKind.Boil) is { } piece)
            return Changes(RemedyKind.BoilLonger, minutes, piece.Spec with { Minutes = Math.Max(0, piece.Spec.Minutes!.Value + minutes) });
        if (weigh.Live.PostBoil is null || Next(weigh) is not { } next)
            return null;
        return Now(weigh, RemedyKind.BoilLonger, minutes, Piece(weigh, minutes, StepLabels.Again), next);
    }

    private static StepSpec Piece(Weigh weigh, double minutes, string label) => new()
    {
        Id = weigh.FreshId("boil"),
        Kind = StepKind.Boil,
        Unit = UnitProcedure.Boil,
        Vessel = weigh.Kettle.Id,
        Minutes = minutes,
        HandsS = 60,
        Label = label,
        Cautions = Cautions.Scald | Cautions.Steam | Cautions.BoilOver,
    };

    /// <summary>What goes in first, where nothing has gone in and no piece of the boil has begun; null: something has.</summary>
    private static RunStep? FirstAddition(RunState state) =>
        state.Steps.FirstOrDefault(s => s.Spec.Kind is StepKind.AddToBoil or StepKind.Boil) is { Status: RunStatus.Idle, Spec.Kind: StepKind.AddToBoil } first ? first : null;

    /// <summary>What waits in the kettle after the boil.</summary>
    private static string? Next(Weigh weigh) => weigh.State.Steps
        .FirstOrDefault(s => s.Status == RunStatus.Idle && s.Spec.Vessel == weigh.Kettle.Id && s.Spec.Kind is not StepKind.KnockOut)?.Spec.Id;
}

/// <summary>Less steam: what is left of the piece at hand gives up minutes.</summary>
internal sealed class BoilShorterWay : Way
{
    public override bool Helps(Off off) => off.Kind is OffKind.Wort;

    public override IEnumerable<Remedy> Offers(Weigh weigh, Off off)
    {
        var aims = Aims.Of(weigh, weigh.Forecast);
        var piece = weigh.State.Steps.FirstOrDefault(s => s.Open && s.Spec.Kind == StepKind.Boil);
        if (aims.Gravity.Near || aims.Gravity.By < 0 || piece is null)
            return [];
        var running = weigh.Live.Running.FirstOrDefault(s => s.Left.Id == piece.Spec.Id);
        var most = Math.Max(0, (running?.Left.Minutes ?? piece.Spec.Minutes ?? 0) - 1);
        return OneOf(weigh.Meeting(a => a.Gravity, most, m => Changes(
            RemedyKind.BoilShorter, m, piece.Spec with { Minutes = Math.Max(0, piece.Spec.Minutes!.Value - m) })));
    }
}
