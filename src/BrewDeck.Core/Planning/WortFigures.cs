using BrewDeck.Core.Physics;

namespace BrewDeck.Core.Planning;

/// <summary>Gravity, bitterness and colour of a wort from the state of the plant.</summary>
public static class WortFigures
{
    /// <summary>IBU by the day's formula, of each addition with the minutes at 100 °C and the mean gravity that it really saw.</summary>
    public static double BitternessIbu(PlantSetting setting, PlantState state) => BitternessIbu(setting, state, state.Hops.Length);

    /// <summary>As <see cref="BitternessIbu(PlantSetting, PlantState)"/>, of the first so many doses alone.</summary>
    public static double BitternessIbu(PlantSetting setting, PlantState state, int doses)
    {
        var litres = WortL(setting, state);
        if (litres <= 0)
            return 0;
        var gravity = SugarSolution.SgFromPlato(state.Vessels[KettleOf(setting)].Plato);
        var sum = 0.0;
        foreach (var hop in state.Hops.AsSpan()[..doses])
            sum += 1000 * hop.AlphaG * Utilisation(setting.Bitterness, hop.GravitySg > 0 ? hop.GravitySg : gravity, hop.BoilMinutes) / litres;
        return sum;
    }

    private static double Utilisation(BitternessFormula formula, double gravitySg, double minutes) => formula switch
    {
        BitternessFormula.Rager => minutes <= 0 ? 0 : Bitterness.RagerUtilisation(minutes) / (1 + Bitterness.RagerGravityAdjustment(gravitySg)),
        _ => Bitterness.TinsethUtilisation(gravitySg, minutes),
    };

    /// <summary>Morey's colour, EBC. Malt colour enters in EBC and is turned to degrees Lovibond.</summary>
    public static double ColourEbc(PlantSetting setting, PlantState state)
    {
        var litres = WortL(setting, state);
        if (litres <= 0 || state.ColourKgEbc <= 0)
            return 0;
        // the maltsters' conversion is linear: the mean colour gives what each malt of its own would
        var kg = state.ColouredKg > 0 ? state.ColouredKg : 1;
        var lovibond = Colour.LovibondFromSrm(Colour.SrmFromEbc(state.ColourKgEbc / kg));
        return Colour.EbcFromSrm(Colour.MoreySrm(Colour.Mcu(kg, lovibond, litres)));
    }

    /// <summary>Wort at knock-out, litres at 20 °C: the volume that bitterness and colour are spread over.</summary>
    private static double WortL(PlantSetting setting, PlantState state) =>
        state.KnockedOutL > 0 ? state.KnockedOutL : Contents.CoolL(state.Vessels[KettleOf(setting)]);

    private static int KettleOf(PlantSetting setting) => setting.IndexOf(setting.Brewhouse.Kettle.Id);
}
