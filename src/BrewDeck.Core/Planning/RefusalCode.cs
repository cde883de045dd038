namespace BrewDeck.Core.Planning;

/// <summary>Stable names of what is refused before anything is worked out; every other refusal has the name of its limit (<see cref="LimitName"/>).</summary>
public static class RefusalCode
{
    public const string NoMash = "no_mash";
    public const string Circuits = "circuits";
    public const string BatchVolume = "batch_volume";
    public const string RestBelowTheLast = "rest_below_the_last";
    public const string NoCoil = "no_coil";
    public const string TunCannotHeat = "tun_cannot_heat";
}
