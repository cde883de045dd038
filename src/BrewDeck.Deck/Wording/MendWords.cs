using BrewDeck.Core.Planning;

namespace BrewDeck.Deck.Wording;

/// <summary>What would mend a plan that cannot be brewed.</summary>
public static class MendWords
{
    public static string Of(Mend mend, Notation notation)
    {
        // nobody measures a ring of a thousand litres to a tenth
        var value = mend is { Code: "kettle_extension", Unit: "L", Value: >= 100 } ? notation.WholeVolume(mend.Value) : notation.Value(mend.Value, mend.Unit);
        return mend.Code switch
        {
            "smaller_batch" => notation.Text($"Brew a smaller batch: {value} into the fermenter."),
            "larger_batch" => notation.Text($"Brew a larger batch: {value} into the fermenter."),
            "thicker_mash" => notation.Text($"Mash thicker: {value}."),
            "thinner_mash" => notation.Text($"Mash thinner: {value}."),
            "fly_sparge" => notation.Text("Sparge, so that less liquor stands in the mash at once."),
            "no_sparge" => notation.Text("Do not sparge: all the liquor goes into the mash."),
            "sparge_in_two_fills" => notation.Text("Fill the tank a second time for the sparge."),
            "warm_the_tun_first" => notation.Text("Warm the tun with hot water before the strike liquor goes in."),
            "larger_fermenter" => notation.Text($"Use a fermenter that holds {value} more."),
            "stand_in_kettle" => notation.Text("Let the wort stand in the kettle: give it the role of the whirlpool."),
            "lower_element" => notation.Text($"Fit an element that is covered at {value}."),
            "two_mashes" => notation.Text("Mash twice and boil together."),
            "kettle_extension" => notation.Text($"Raise the kettle by a ring of {value} or more."),
            "colder_water" => notation.Text($"Cool with colder water: {value}."),
            "cool_in_fermenter" => notation.Text($"Cast out warmer and cool to {notation.Target(mend.Value)} in the fermenter before pitching."),
            "lower_evaporation" => notation.Text($"Boil more gently: no more than {value}."),
            "more_heat" => mend.Unit == "times" ? notation.Text($"Give the vessel {notation.Number(mend.Value, "0.0")} times the heat.") : notation.Text($"Give the vessel heat enough for {value}."),
            "throttle_pump" => notation.Text($"Throttle the pump at its outlet: the false bottom bears {value}."),
            "lower_inlet" => notation.Text($"Lower the inlet: no more than {value} above the level that is drawn from."),
            "stronger_pump" => notation.Text($"Use a pump that lifts more than {value}."),
            "raise_vessel" => notation.Text($"Put the vessel that is drawn from {value} higher, or the other one lower."),
            "add_pump" => notation.Text("Use a pump."),
            "smaller_rise" => notation.Text("Put a rest in between, so that each rise is smaller."),
            "other_mash_heating" => notation.Text("Raise the mash otherwise: by direct heat, hot water or a coil."),
            "larger_circuit" => notation.Text($"Plug it into a circuit that carries {value} for hours."),
            "smaller_element" => notation.Text($"Use an element of {value} or less."),
            "grist_to_mash" => notation.Text("Put malt for the mash (use = \"mash\") and at least one rest into the recipe."),
            "circuits_in_use" => notation.Text($"Use 1 to {value} circuits."),
            "rests_in_rising_order" => notation.Text($"Put the rests in rising order: {notation.Target(mend.Value)} or warmer."),
            "single_rest" => notation.Text($"Mash with one rest at {notation.Target(mend.Value)}."),
            _ => $"{Names.Sentence(Names.Plainly(mend.Code))}{(mend.Unit.Length > 0 ? $": {value}" : "")}.",
        };
    }
}
