namespace BrewDeck.Core.Planning;

/// <summary>The one model: what a step makes of the plant.</summary>
public static class PlantModel
{
}
