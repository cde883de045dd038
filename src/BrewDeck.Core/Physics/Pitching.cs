namespace BrewDeck.Core.Physics;

/// <summary>Yeast to pitch, in cells per mL and °P.</summary>
public static class Pitching
{
    /// <summary>Million cells per mL and °P for an ale (Fix and Fix 1997).</summary>
    public const double AleMillionPerMlPlato = 0.75;

    /// <summary>Million cells per mL and °P for a lager (Fix and Fix 1997).</summary>
    public const double LagerMillionPerMlPlato = 1.5;

    /// <summary>Million cells per mL and °P: the textbooks' round figure.</summary>
    public const double TextbookMillionPerMlPlato = 1.0;

    /// <summary>Billions of cells in a gram of dried yeast; common practice, no source.</summary>
    public const double DriedBillionPerG = 10;

    /// <summary>Billions of cells for a wort in L at a °P.</summary>
    public static double CellsBillion(double rateMillionPerMlPlato, double litres, double plato) =>
        rateMillionPerMlPlato * litres * plato;
}
