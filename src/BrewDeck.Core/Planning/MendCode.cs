namespace BrewDeck.Core.Planning;

/// <summary>Stable names of what would mend a plan that cannot be brewed. Each has its words in the deck; how much of it, a <see cref="Mend"/> says.</summary>
public static class MendCode
{
    public const string SmallerBatch = "smaller_batch";
    public const string LargerBatch = "larger_batch";
    public const string ThickerMash = "thicker_mash";
    public const string ThinnerMash = "thinner_mash";
    public const string FlySparge = "fly_sparge";
    public const string NoSparge = "no_sparge";
    public const string SpargeInTwoFills = "sparge_in_two_fills";
    public const string WarmTheTunFirst = "warm_the_tun_first";
    public const string LargerFermenter = "larger_fermenter";
    public const string StandInKettle = "stand_in_kettle";
    public const string LowerElement = "lower_element";
    public const string TwoMashes = "two_mashes";
    public const string KettleExtension = "kettle_extension";
    public const string ColderWater = "colder_water";
    public const string CoolInFermenter = "cool_in_fermenter";
    public const string LowerEvaporation = "lower_evaporation";
    public const string MoreHeat = "more_heat";
    public const string LowerInlet = "lower_inlet";
    public const string StrongerPump = "stronger_pump";
    public const string RaiseVessel = "raise_vessel";
    public const string AddPump = "add_pump";
    public const string SmallerRise = "smaller_rise";
    public const string OtherMashHeating = "other_mash_heating";
    public const string MashWithoutCoil = "mash_without_coil";
    public const string LargerCircuit = "larger_circuit";
    public const string SmallerElement = "smaller_element";
    public const string GristToMash = "grist_to_mash";
    public const string CircuitsInUse = "circuits_in_use";
    public const string RestsInRisingOrder = "rests_in_rising_order";
    public const string SingleRest = "single_rest";
}
