using System.Collections.Immutable;

namespace BrewDeck.Core.Learning;

/// <summary>What one batch says about one parameter of the brewhouse.</summary>
/// <param name="Parameter">See <see cref="LessonParameter.Id"/>.</param>
/// <param name="Value">In the parameter's unit; for a limit the value that it lies at or below.</param>
/// <param name="Sd">Standard deviation from the noise of the readings, same unit.</param>
/// <param name="SharedSd">Standard deviation from what is the same in each batch: the instruments' own error, numbers that cannot be told apart from this one.</param>
/// <param name="Readings">What drives it, in short words with numbers.</param>
public sealed record Evidence(string Parameter, int Batch, double Value, double Sd, double SharedSd, ImmutableArray<DrivingReading> Readings)
{
    /// <summary>Only a bound: the tun had more to give when the kettle was full.</summary>
    public bool IsUpperLimit { get; init; }

    /// <summary>Of a rehearsed batch: it tells of the simulated brewhouse.</summary>
    public bool Rehearsed { get; init; }

    /// <summary>Why it teaches nothing: it is shown, and left out of what is believed; null: it counts.</summary>
    public Spoilt? LeftOut { get; init; }
}

/// <summary>A reading, a target or a time that an evidence rests on.</summary>
/// <param name="What">Stable name, snake_case with its unit, such as <c>kettle_volume_l</c>.</param>
public sealed record DrivingReading(string What, double Value);
