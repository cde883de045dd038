using System.Collections.Immutable;
using BrewDeck.Core.Physics;

namespace BrewDeck.Core.Waters;

/// <param name="MassG">A multiple of what the scale shows, above 0.</param>
public sealed record SaltDose(BrewingSalt Salt, double MassG);

/// <param name="MassFraction">Strength by the label, 0..1.</param>
/// <param name="VolumeMl">A multiple of <see cref="AcidOnHand.ResolutionMl"/>, above 0.</param>
public sealed record AcidDose(AcidKind Kind, double MassFraction, double VolumeMl);

/// <summary>What goes into one filling of the tank, and what that gives.</summary>
/// <param name="VolumeL">All of it.</param>
/// <param name="SoftL">Soft water in it.</param>
/// <param name="Ions">After salts and acid.</param>
public sealed record WaterDose(
    double VolumeL, double SoftL, ImmutableArray<SaltDose> Salts, AcidDose? Acid, WaterIons Ions)
{
    public bool IsEmpty => Salts.IsEmpty && Acid is null;
}

/// <summary>The treatment of a day's water.</summary>
/// <param name="SoftShare">Soft water in strike and sparge liquor, 0..1.</param>
/// <param name="Sparge">Null without a sparge.</param>
/// <param name="MashPh">Predicted, at room temperature; within <see cref="MashAcidity.ErrorBandPh"/>.</param>
public sealed record WaterTreatment(
    WaterSupply Supply, WaterTarget Target, double SoftShare, WaterDose Strike, WaterDose? Sparge, double MashPh)
{
    /// <summary>Strike, then sparge. A method, so that records of the plan do not hold each dose twice.</summary>
    public IEnumerable<WaterDose> Doses() => Sparge is null ? [Strike] : [Strike, Sparge];
}
