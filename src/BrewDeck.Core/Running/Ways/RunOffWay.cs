using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Ways;

/// <summary>A short bag, or first runnings weaker or stronger than planned: the kettle's mark is moved, and the sparge with it.</summary>
internal sealed class RunOffWay : Way
{
    /// <summary>Of the planned volume in the kettle.</summary>
    private const double Most = 0.3;

    public override bool Helps(Off off) => off.Kind is OffKind.Wort;

    public override IEnumerable<Remedy> Offers(Weigh weigh, Off off)
    {
        var gravity = Aims.Of(weigh, weigh.Forecast).Gravity;
        if (weigh.RunOff?.Spec is not { VolumeL: { } mark } run || gravity.Near)
            return [];
        var (kind, sign) = gravity.By > 0 ? (RemedyKind.RunOffMore, 1) : (RemedyKind.RunOffLess, -1);
        var most = sign > 0 ? Math.Min(Most * mark, weigh.RoomL(run.To)) : Most * mark;
        Remedy Of(double litres) => Changes(kind, litres, run with { VolumeL = mark + sign * litres, SpargeL = Sparge(run, sign * litres) }) with
        {
            WaterL = sign > 0 && run.SpargeL > 0 ? litres : null,
        };
        return OneOf(weigh.Meeting(a => a.Gravity, most, Of));
    }

    private static double? Sparge(StepSpec run, double more) => run.SpargeL is { } sparge and > 0 ? Math.Max(0, sparge + more) : run.SpargeL;
}
