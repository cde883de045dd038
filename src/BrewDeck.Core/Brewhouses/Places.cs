namespace BrewDeck.Core.Brewhouses;

/// <summary>Ids of places that are read, filled or asked about beside the vessels of the profile. They stand in records: none may change.</summary>
public static class Places
{
    public const string Fermenter = "fermenter";

    /// <summary>The grist before it is mashed.</summary>
    public const string Grain = "grain";

    /// <summary>The water as it comes from the tap.</summary>
    public const string Source = "source";

    public const string Room = "room";
}
