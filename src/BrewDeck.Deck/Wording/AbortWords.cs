using BrewDeck.Core.Running;

namespace BrewDeck.Deck.Wording;

/// <summary>Why a day was given up: in the brewer's own words, or in ours where the program ended it.</summary>
public static class AbortWords
{
    public static string Reason(string reason, Notation notation) => reason switch
    {
        RunAborted.ExerciseOver => notation.Text("the exercise is over"),
        RunAborted.OutOfTime => notation.Text("the rehearsed day did not come to its end in time"),
        _ => reason,
    };

    /// <summary>On a batch's page; empty for a day that was not given up.</summary>
    public static string Line(RunState state, Notation notation) => state switch
    {
        { AbortReason.Length: 0 } => "",
        { ExerciseOver: true } => notation.Text("the exercise is over: it is of the day's beginning alone"),
        _ => notation.Text($"given up: {Reason(state.AbortReason, notation)}"),
    };
}
