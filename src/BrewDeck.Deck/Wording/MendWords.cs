using BrewDeck.Core.Planning;

namespace BrewDeck.Deck.Wording;

/// <summary>What would mend a plan that cannot be brewed.</summary>
public static class MendWords
{
    public static string Of(Mend mend, Notation notation)
    {
        var value = notation.Value(mend.Value, mend.Unit);
        return mend.Code switch
        {
            "smaller_batch" => $"Brew a smaller batch: {value} into the fermenter.",
            "larger_batch" => $"Brew a larger batch: {value} into the fermenter.",
            "thicker_mash" => $"Mash thicker: {value}.",
            "thinner_mash" => $"Mash thinner: {value}.",
            "fly_sparge" => "Sparge, so that less liquor stands in the mash at once.",
            "no_sparge" => "Do not sparge: all the liquor goes into the mash.",
            "sparge_in_two_fills" => "Fill the tank a second time for the sparge.",
            "warm_the_tun_first" => "Warm the tun with hot water before the strike liquor goes in.",
            "larger_fermenter" => $"Use a fermenter that holds {value} more.",
            "stand_in_kettle" => "Let the wort stand in the kettle: give it the role of the whirlpool.",
            "lower_element" => $"Fit an element that {value} cover.",
            "two_mashes" => "Mash twice and boil together.",
            "kettle_extension" => $"Raise the kettle by a ring of {value} or more.",
            "colder_water" => $"Cool with colder water: {value}.",
            "cool_in_fermenter" => $"Cast out warmer and cool to {notation.Target(mend.Value)} in the fermenter before pitching.",
            "lower_evaporation" => $"Boil more gently: no more than {value}.",
            "more_heat" => mend.Unit == "times" ? $"Give the vessel {Notation.Number(mend.Value, "0.0")} times the heat." : $"Give the vessel heat enough for {value}.",
            "throttle_pump" => $"Throttle the pump at its outlet: the plate bears {value}.",
            "lower_inlet" => $"Bring the inlet lower: no more than {value} above the level that is drawn from.",
            "stronger_pump" => $"Use a pump that lifts more than {value}.",
            "raise_vessel" => $"Put the vessel that is drawn from {value} higher, or the other one lower.",
            "add_pump" => "Use a pump.",
            "larger_circuit" => $"Plug it into a circuit that carries {value} for hours.",
            "smaller_element" => $"Use an element of {value} or less.",
            "grist_to_mash" => "Put malt with use mash into the recipe, and at least one rest.",
            "circuits_in_use" => $"Use 1 to {value} circuits.",
            "rests_in_rising_order" => $"Put the rests in rising order: {notation.Target(mend.Value)} or warmer.",
            "single_rest" => $"Mash with one rest at {notation.Target(mend.Value)}.",
            _ => $"{Names.Sentence(Names.Plainly(mend.Code))}{(mend.Unit.Length > 0 ? $": {value}" : "")}.",
        };
    }
}
