namespace BrewDeck.Deck.Wording;

/// <summary>The corner's words for a rehearsal.</summary>
public static class RehearsalWords
{
    /// <summary>"rehearsal x60", "rehearsal paused, own hands"; empty on a real day.</summary>
    public static string Of(IRehearsalControls? controls)
    {
        if (controls is null)
            return "";
        var pace = controls.Paused ? "paused" : "x" + Notation.Number(controls.Speed, "0.#");
        return $"rehearsal {pace}{(controls.HandsOn ? ", own hands" : "")}";
    }
}
