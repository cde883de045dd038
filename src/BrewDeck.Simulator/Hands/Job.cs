using BrewDeck.Core.Planning;

namespace BrewDeck.Simulator.Hands;

/// <summary>A step that the hands have begun.</summary>
internal sealed class Job(Order order, double startS, double workFactor)
{
    /// <summary>Beyond three times the planned length and this, nobody waits any longer; s.</summary>
    private const double PatienceS = 1800;

    public Order Order { get; private set; } = order;

    public double StartS { get; set; } = startS;

    /// <summary>Length of a step by the clock or by handwork, s.</summary>
    public double WorkS { get; private set; } = LengthS(order, workFactor);

    public bool Ended { get; set; }

    /// <summary>Since when it is held, s; NaN: it is not.</summary>
    public double HeldS { get; set; } = double.NaN;

    /// <summary>Sparge liquor still owed when the valve was closed, litres; NaN: never closed.</summary>
    public double SpargeLeftL { get; set; } = double.NaN;

    public bool RunsByClock => Order.Kind is StepKind.Rest or StepKind.HotBreak or StepKind.Boil or StepKind.Whirlpool or StepKind.Stand;

    public bool Active => !Ended && double.IsNaN(HeldS);

    public bool WorkDone(double nowS) => nowS >= StartS + WorkS - 1e-3;

    public bool Hopeless(double nowS) => nowS > StartS + 3 * Order.DurationS + PatienceS;

    /// <summary>More or fewer minutes than at the start.</summary>
    public void Extend(StepSpec spec)
    {
        WorkS += 60 * ((spec.Minutes ?? 0) - (Order.Spec.Minutes ?? 0));
        Order = Order with { Spec = spec };
    }

    /// <summary>Other marks than at the start.</summary>
    public void Turn(StepSpec spec) => Order = Order with { Spec = spec, TargetC = spec.TargetC ?? Order.TargetC };

    /// <summary>Length by the clock, or by the hands with a brewer's pace.</summary>
    private static double LengthS(Order order, double workFactor) => order.Kind switch
    {
        StepKind.Rest or StepKind.HotBreak or StepKind.Boil or StepKind.Whirlpool or StepKind.Stand =>
            60 * (order.Spec.Minutes ?? 0),
        StepKind.AddFirstWortHops or StepKind.AddToBoil or StepKind.AddToWhirlpool or StepKind.AddWater or StepKind.AddExtract or StepKind.TreatMash =>
            Math.Min(60, order.Spec.HandsS),
        _ => workFactor * (60 * order.Spec.Minutes ?? Math.Min(order.Spec.HandsS, 600)),
    };
}
