using BrewDeck.Core.Rehearsing;

namespace BrewDeck.Deck.Wording;

/// <summary>The corner's words for a rehearsal.</summary>
public static class RehearsalWords
{
    public static string Of(RehearsalMark mark, Notation notation) => mark switch
    {
        RehearsalMark.OwnHands => notation.Text("your own hands do the work"),
        RehearsalMark.StandIn => notation.Text("the stand-in brewer does the work"),
        _ => notation.Text("the laptop lost its power"),
    };

    /// <summary>"rehearsal x60", "rehearsal paused, own hands"; empty on a real day.</summary>
    public static string Of(IRehearsalControls? controls, Notation notation)
    {
        if (controls is null)
            return "";
        var pace = controls.Paused ? notation.Text("paused") : "x" + notation.Number(controls.Speed, "0.#");
        return notation.Text($"rehearsal {pace}{(controls.HandsOn ? notation.Text(", own hands") : "")}");
    }
}
