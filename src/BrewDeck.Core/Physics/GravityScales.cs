namespace BrewDeck.Core.Physics;

/// <summary>
/// The other published fits between SG and °P or °Bx. BrewDeck reckons with <see cref="SugarSolution"/>; these are for
/// comparing with printed figures and for people who must match a named table.
/// </summary>
public static class GravityScales
{
    /// <summary>
    /// ASBC cubic fit to the ASBC table, apparent SG 20/20; up to SG 1.083. Gives −0.003 °P at 1.000.
    /// </summary>
    public static double AsbcPlato(double sg) => ((135.997 * sg - 630.272) * sg + 1111.14) * sg - 616.868;

    /// <summary>Apparent SG 20/20 of a °P by the ASBC cubic (Newton's inverse); up to about 20 °P.</summary>
    public static double AsbcSg(double plato)
    {
        var sg = 1.0 + plato / 250.0;
        for (var i = 0; i < 20; i++)
            sg -= (AsbcPlato(sg) - plato) / ((3.0 * 135.997 * sg - 2.0 * 630.272) * sg + 1111.14);
        return sg;
    }

    /// <summary>NBS circular C440 cubic, apparent SG 20/20 to °Bx; up to SG 1.17874.</summary>
    public static double NbsBrix(double sg) => ((182.4601 * sg - 775.6821) * sg + 1262.7794) * sg - 669.5622;

    /// <summary>Lincoln equation, °P; ordinary worts.</summary>
    public static double LincolnPlato(double sg) => (463.0 - 205.0 * sg) * (sg - 1.0);

    /// <summary>The 259 rule on SG 60/60 °F, Manning 1993 equation 3; ordinary worts, about 0.05 °P low.</summary>
    public static double Rule259Plato(double sg) => 259.0 - 259.0 / sg;

    /// <summary>Manning 1993 equation 4 on SG 60/60 °F, Brewing Techniques 1(3):30-35.</summary>
    public static double ManningPlato(double sg) => ((190.74 * sg - 800.47) * sg + 1286.4) * sg - 676.67;

    /// <summary>Widely quoted rational fit to the ASBC table; 0..30 °P, within 0.0001.</summary>
    public static double RationalSg(double plato) => 1.0 + plato / (258.6 - plato / 258.2 * 227.1);
}
