namespace BrewDeck.Core.Rehearsing;

/// <summary>How long hands are at an act, whoever asks for it: the run sheet's remedy, or a rehearsal's plant.</summary>
public static class HandWork
{
    /// <summary>Cut the bed, let it settle and run clear again; common practice, no source.</summary>
    public const double RakeMin = 15;

    /// <summary>Stop the pump, fill its line, start it again; common practice, no source.</summary>
    public const double PrimeMin = 3;

    /// <summary>Minutes that nothing flows meanwhile; null: it goes on, or nobody can say.</summary>
    public static double? StandsMin(HandAct act) => act switch
    {
        HandAct.RakeBed => RakeMin,
        HandAct.PrimePump => PrimeMin,
        _ => null,
    };
}
