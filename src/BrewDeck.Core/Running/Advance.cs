using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running;

/// <summary>Moves the model's plant along with what really happened.</summary>
internal static class Advance
{
    /// <summary>
    /// Runs a segment up to now. A step by the clock goes on as long as nobody ends it: a boil that is not ended boils, and its
    /// minutes left become negative.
    /// </summary>
    public static (PlantState After, Segment Going) Cut(PlantSetting setting, Segment segment, PlantState plant, double nowS)
    {
        var (until, given) = Given(segment, nowS);
        var spec = segment.Left;
        if (spec.Kind.EndsBy() == EndsBy.Clock)
        {
            var ran = PlantModel.Run(setting, spec with { Minutes = given / 60 }, plant, segment.SinceS, given);
            return (ran.State, ByClock(segment, nowS));
        }
        var outcome = PlantModel.Run(setting, spec, plant, segment.SinceS, given);
        return outcome.Left is { } more
            ? (outcome.State, segment with { Left = more, SinceS = until, EndedS = null })
            : (outcome.State, segment with { Left = Spent(spec), SinceS = until, EndedS = segment.EndedS ?? outcome.EndS });
    }

    /// <summary>What is left of a segment by the clock; any other stays as it is.</summary>
    public static Segment ByClock(Segment segment, double nowS)
    {
        if (segment.Left.Kind.EndsBy() != EndsBy.Clock)
            return segment;
        var (until, given) = Given(segment, nowS);
        var left = (segment.Left.Minutes ?? 0) - given / 60;
        return segment with { Left = segment.Left with { Minutes = left }, SinceS = until, EndedS = left <= 0 ? until + 60 * left : null };
    }

    /// <summary>A clock that was set back does not brew the same minutes twice.</summary>
    private static (double UntilS, double GivenS) Given(Segment segment, double nowS) =>
        (Math.Max(nowS, segment.SinceS), Math.Max(nowS, segment.SinceS) - segment.SinceS);

    /// <summary>The brewer ends a step: one by the clock has lasted as long as it has, any other has reached what it was for.</summary>
    public static PlantState Finish(PlantSetting setting, Segment segment, PlantState plant, double nowS)
    {
        var spec = segment.Left;
        if (spec.Kind.EndsBy() == EndsBy.Clock)
            return Cut(setting, segment, plant, nowS).After;
        var outcome = PlantModel.Run(setting, spec, plant, segment.SinceS, double.PositiveInfinity);
        var vessels = PlantModel.VesselsOf(setting, spec);
        var ended = PlantModel.WaitUntil(setting, outcome.State, nowS).Vessels.ToArray();
        foreach (var vessel in vessels)
            ended[vessel] = ended[vessel] with { AtS = nowS };
        return outcome.State with { Vessels = [.. ended] };
    }

    /// <summary>A step that has nothing left to do: no volume to move, no minutes to wait.</summary>
    private static StepSpec Spent(StepSpec spec) => spec.Kind.EndsBy() switch
    {
        EndsBy.Level when spec.Kind is StepKind.Fill or StepKind.TransferStrike => spec with { VolumeL = 0 },
        // what went in is in: a power cut between the start and the end of an addition does not put it in twice
        EndsBy.Act => spec with { Charges = [], VolumeL = 0 },
        EndsBy.Hands => spec with { Minutes = 0, SpargeL = spec.SpargeL is null ? null : 0, Charges = spec.Kind == StepKind.DoughIn ? [] : spec.Charges },
        _ => spec with { SpargeL = spec.SpargeL is null ? null : 0 },
    };
}
