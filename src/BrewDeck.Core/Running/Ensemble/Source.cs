using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Ensemble;

/// <summary>One independent thing that is not known of a day: where it acts, for a deviation from what is stated.</summary>
/// <param name="Name">As in <see cref="UsualSpreads"/>, with what it belongs to: <c>net_power/kettle</c>.</param>
/// <param name="Sd">Standard deviation, in the unit of the deviation that the functions take.</param>
internal sealed record Source(string Name, double Sd)
{
    /// <summary>The largest deviation that can be, in standard deviations: more than all cannot dissolve.</summary>
    public double Most { get; init; } = double.PositiveInfinity;

    /// <summary>What is before it in the day goes as stated: a change of the plant is felt by no step of an earlier unit.</summary>
    public UnitProcedure From { get; init; }

    /// <summary>The plant with this deviation.</summary>
    public Func<PlantSetting, double, PlantSetting>? OnPlant { get; init; }

    /// <summary>A step of the run sheet as it really goes with this deviation.</summary>
    public Func<StepSpec, double, StepSpec>? OnStep { get; init; }

    /// <summary>What an instrument shows beyond the true value, per unit of the deviation.</summary>
    public Func<ReadingKind, string, double, double>? OnReading { get; init; }
}
