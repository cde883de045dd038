namespace BrewDeck.Core.Planning;

/// <summary>What a day's choices can be at all, however they are given. From memory: water freezes and a tap never scalds; people brew between frost and great heat.</summary>
public static class DayBounds
{
    public static (double Least, double Most) SourceWaterC => (0, 60);

    public static (double Least, double Most) AmbientC => (-10, 45);

    public static (double Least, double Most) GrainC => (-10, 45);

    /// <summary>From a jar to the largest pilot brewhouse.</summary>
    public static (double Least, double Most) BatchL => (1, 2000);

    /// <summary>From the lowest shores to the highest towns.</summary>
    public static (double Least, double Most) AltitudeM => (-400, 5000);
}
