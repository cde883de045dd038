namespace BrewDeck.Core.Physics;

/// <summary>The ions that matter in brewing water.</summary>
public enum Ion
{
    Calcium,
    Magnesium,
    Sodium,
    Potassium,
    Chloride,
    Sulphate,
    Bicarbonate,
    Carbonate,
    Hydroxide,
}

/// <summary>Atomic masses in g/mol: IUPAC 2021 standard (abridged) atomic weights.</summary>
internal static class AtomicMass
{
    internal const double H = 1.008;
    internal const double C = 12.011;
    internal const double O = 15.999;
    internal const double Na = 22.990;
    internal const double Mg = 24.305;
    internal const double S = 32.06;
    internal const double Cl = 35.45;
    internal const double K = 39.098;
    internal const double Ca = 40.078;
    internal const double Water = 2.0 * H + O;
}

/// <summary>Molar masses and charges of <see cref="Ion"/>.</summary>
public static class Ions
{
    /// <summary>Molar mass in g/mol.</summary>
    public static double GramsPerMol(Ion ion) => ion switch
    {
        Ion.Calcium => AtomicMass.Ca,
        Ion.Magnesium => AtomicMass.Mg,
        Ion.Sodium => AtomicMass.Na,
        Ion.Potassium => AtomicMass.K,
        Ion.Chloride => AtomicMass.Cl,
        Ion.Sulphate => AtomicMass.S + 4.0 * AtomicMass.O,
        Ion.Bicarbonate => AtomicMass.H + AtomicMass.C + 3.0 * AtomicMass.O,
        Ion.Carbonate => AtomicMass.C + 3.0 * AtomicMass.O,
        Ion.Hydroxide => AtomicMass.O + AtomicMass.H,
        _ => throw new ArgumentOutOfRangeException(nameof(ion), ion, "no such ion"),
    };

    /// <summary>Charge number with its sign.</summary>
    public static int Charge(Ion ion) => ion switch
    {
        Ion.Calcium or Ion.Magnesium => 2,
        Ion.Sodium or Ion.Potassium => 1,
        Ion.Sulphate or Ion.Carbonate => -2,
        _ => -1,
    };

    /// <summary>Equivalent mass in mg/mEq.</summary>
    public static double EquivalentMass(Ion ion) => GramsPerMol(ion) / Math.Abs(Charge(ion));
}
