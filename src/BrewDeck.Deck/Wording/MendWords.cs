using BrewDeck.Core.Planning;

namespace BrewDeck.Deck.Wording;

/// <summary>What would mend a plan that cannot be brewed.</summary>
public static class MendWords
{
    public static string Of(Mend mend, Notation notation)
    {
        var value = mend switch
        {
            // nobody measures a ring of a thousand litres to a tenth
            { Code: MendCode.KettleExtension, Unit: "L", Value: >= 100 } => notation.WholeVolume(mend.Value),
            // searched in steps of 0.05: 2.95 instead of 3 may be all that is needed
            { Unit: "L/kg" } => notation.Rate(mend.Value, mend.Unit, "0.0#"),
            _ => notation.Value(mend.Value, mend.Unit),
        };
        return mend.Code switch
        {
            MendCode.SmallerBatch => notation.Text($"Brew a smaller batch: {value} into the fermenter."),
            MendCode.LargerBatch => notation.Text($"Brew a larger batch: {value} into the fermenter."),
            MendCode.ThickerMash => notation.Text($"Mash thicker: {value}."),
            MendCode.ThinnerMash => notation.Text($"Mash thinner: {value}."),
            MendCode.FlySparge => notation.Text("Sparge, so that less liquor stands in the mash at once."),
            MendCode.NoSparge => notation.Text("Do not sparge: all the liquor goes into the mash."),
            MendCode.SpargeInTwoFills => notation.Text("Fill the tank a second time for the sparge."),
            MendCode.WarmTheTunFirst => notation.Text("Warm the tun with hot water before the strike liquor goes in."),
            MendCode.LargerFermenter => notation.Text($"Use a fermenter that holds {value} more."),
            MendCode.StandInKettle => notation.Text("Let the wort stand in the kettle: give it the role of the whirlpool."),
            MendCode.LowerElement => notation.Text($"Fit an element that is covered at {value}."),
            MendCode.TwoMashes => notation.Text("Mash twice and boil together."),
            MendCode.KettleExtension => notation.Text($"Raise the kettle by a ring of {value} or more."),
            MendCode.ColderWater => notation.Text($"Cool with colder water: {value}."),
            MendCode.CoolInFermenter => notation.Text($"Cast out warmer and cool to {notation.Target(mend.Value)} in the fermenter: give its cooling in the brewhouse file ([fermenter] cooling)."),
            MendCode.LowerEvaporation => notation.Text($"Boil more gently: no more than {value}."),
            MendCode.MoreHeat => mend.Unit == "times" ? notation.Text($"Give the vessel {notation.Number(mend.Value, "0.0")} times the heat.") : notation.Text($"Give the vessel heat enough for {value}."),
            MendCode.LowerInlet => notation.Text($"Lower the inlet: no more than {value} above the level that is drawn from."),
            MendCode.StrongerPump => notation.Text($"Use a pump that lifts more than {value}."),
            MendCode.RaiseVessel => notation.Text($"Put the vessel that is drawn from {value} higher, or the other one lower."),
            MendCode.AddPump => notation.Text("Use a pump."),
            MendCode.SmallerRise => notation.Text("Put a rest in between, so that each rise is smaller."),
            MendCode.OtherMashHeating => notation.Text("Raise the mash otherwise: by direct heat, hot water or a coil."),
            MendCode.MashWithoutCoil => notation.Text("Heat the mash in another way: by its own heat, hot water or decoction."),
            MendCode.LargerCircuit => notation.Text($"Plug it into a circuit that carries {value} for hours."),
            MendCode.SmallerElement => notation.Text($"Use an element of {value} or less."),
            MendCode.GristToMash => notation.Text("Put malt for the mash (use = \"mash\") and at least one rest into the recipe."),
            MendCode.CircuitsInUse => notation.Text($"Use 1 to {value} circuits."),
            MendCode.RestsInRisingOrder => notation.Text($"Put the rests in rising order: {notation.Target(mend.Value)} or warmer."),
            MendCode.SingleRest => notation.Text($"Mash with one rest at {notation.Target(mend.Value)}."),
            _ => $"{Names.Sentence(Names.Plainly(mend.Code))}{(mend.Unit.Length > 0 ? $": {value}" : "")}.",
        };
    }
}
