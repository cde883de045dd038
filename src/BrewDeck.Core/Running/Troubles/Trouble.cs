namespace BrewDeck.Core.Running.Troubles;

/// <summary>Something that goes wrong and shows in no reading: the brewer says so.</summary>
public enum TroubleKind
{
    /// <summary>Nothing runs off any more; about the step.</summary>
    RunoffStuck,

    /// <summary>A breaker has opened; about the circuit.</summary>
    CircuitTripped,

    /// <summary>An element no longer heats; about the vessel and the element, see <see cref="Trouble.Element"/>.</summary>
    ElementFailed,

    /// <summary>The boil has stopped; about the step.</summary>
    BoilInterrupted,

    /// <summary>What was marked as added did not go in; about the step.</summary>
    AdditionMissed,

    /// <summary>Wort went over the rim; about the step. How much only the kettle's level tells.</summary>
    BoiledOver,
}

/// <param name="About">Id of a step, of a circuit, or of an element.</param>
public sealed record Trouble(TroubleKind Kind, string About)
{
    /// <summary>Ends by itself or by what is done about it: only these can be said to be over.</summary>
    public bool CanEnd => Kind is not (TroubleKind.AdditionMissed or TroubleKind.BoiledOver);

    /// <summary>Id of an element: its vessel's id and its number, from 1, the strongest first.</summary>
    public static string Element(string vesselId, int number) => FormattableString.Invariant($"{vesselId}/{number}");

    /// <summary>Vessel and number of an element's id; null when it is none.</summary>
    public static (string VesselId, int Number)? ElementOf(string about)
    {
        var slash = about.LastIndexOf('/');
        return slash > 0 && int.TryParse(about.AsSpan(slash + 1), System.Globalization.CultureInfo.InvariantCulture, out var number) && number > 0
            ? (about[..slash], number)
            : null;
    }
}

/// <param name="OverMs">When it was over, Unix ms; null: it still is so.</param>
public sealed record ReportedTrouble(int Seq, long AtMs, Trouble Trouble, long? OverMs = null)
{
    public bool Stands => OverMs is null && Trouble.CanEnd;
}
