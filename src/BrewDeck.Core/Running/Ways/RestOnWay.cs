using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Ways;

/// <summary>
/// A mash that nothing raises as it should is not raised any further: it rests on at what it has, as much longer as the model says that it then
/// takes to convert, and is run off without a mash-out.
/// </summary>
internal sealed class RestOnWay : Way
{
    private const double LongestMin = 60;

    public override bool Helps(Off off) => off.Kind == OffKind.Power;

    public override IEnumerable<Remedy> Offers(Weigh weigh, Off off)
    {
        var house = weigh.Live.Setting.Brewhouse;
        var heated = house.Habits.MashHeating switch
        {
            MashHeating.Direct => house.MashTun,
            MashHeating.Coil => house.HotLiquorTank,
            _ => null,
        };
        var ramps = Ramps(weigh);
        if (heated is null || ramps.IsEmpty || !weigh.LacksHeat(heated.Id) || Has(weigh, ramps[0]) is not { } celsius)
            return [];
        var none = Of(weigh, ramps, celsius, 0);
        var gravity = Aims.Of(weigh, weigh.With(none)).Gravity;
        var longer = gravity.Near || gravity.By > 0 ? null : weigh.MeetingOrNearing(a => a.Gravity, LongestMin, m => Of(weigh, ramps, celsius, m), none);
        return [longer ?? none];
    }

    /// <summary>Of the mash tun, still open.</summary>
    public static ImmutableArray<RunStep> Ramps(Weigh weigh) =>
        [.. weigh.State.Steps.Where(s => s.Open && s.Spec.Kind == StepKind.Ramp && s.Spec.Vessel == weigh.Live.Setting.Brewhouse.MashTun.Id)];

    /// <summary>Rests of it that only end the conversion and have not begun.</summary>
    public static IEnumerable<RunStep> MashOuts(Weigh weigh) => weigh.State.Steps.Where(s => s is { Status: RunStatus.Idle, Spec.Kind: StepKind.Rest, Spec.TargetC: >= RestReadings.MashOutC });

    /// <summary>What it rested at before the first of them, or has come to since, °C; null: it rested at nothing.</summary>
    private static double? Has(Weigh weigh, RunStep ramp)
    {
        var rested = weigh.State.Steps.TakeWhile(s => s != ramp).LastOrDefault(s => s.Spec.Kind == StepKind.Rest)?.Spec.TargetC;
        return ramp.Status == RunStatus.Idle || rested is null ? rested : Math.Max(rested.Value, weigh.Live.Vessel(ramp.Spec.Vessel).TempC);
    }

    private static Remedy Of(Weigh weigh, ImmutableArray<RunStep> ramps, double celsius, double minutes)
    {
        var (steps, tun) = (weigh.State.Steps, ramps[0].Spec.Vessel);
        var after = steps.SkipWhile(s => s != ramps[0]).Where(s => s.Status == RunStatus.Idle && s.Spec.Kind is StepKind.Rest or StepKind.Vorlauf && s.Spec.TargetC is not null).ToList();
        var mashOuts = MashOuts(weigh).ToList();
        var rests = after.Except(mashOuts).Select(s => s.Spec with { TargetC = celsius }).ToList();
        var longest = rests.FindLastIndex(s => s.Kind == StepKind.Rest);
        if (longest >= 0)
            rests[longest] = rests[longest] with { Minutes = rests[longest].Minutes + minutes };
        else if (minutes > 0 && steps.LastOrDefault(s => s.Open && s.Spec.Kind == StepKind.Rest && !mashOuts.Contains(s)) is { } now)
            rests.Add(now.Spec with { Minutes = now.Spec.Minutes + minutes });
        return new(RemedyKind.RestOn, tun, minutes, 0, [], "", [.. rests], []) { Ends = [.. ramps.Concat(mashOuts).Concat(IdlePlugsTo(weigh, tun)).Select(s => s.Spec.Id)] };
    }
}
