namespace BrewDeck.Deck.Wording;

/// <summary>Why a command cannot be done now.</summary>
public static class DecisionWords
{
    public static string Refused(string code) => code switch
    {
        "not_open" => "No batch is open.",
        "already_open" => "The batch is open already.",
        "run_over" => "The day is over; nothing more can be done in this batch.",
        "unknown_step" => "That step is not on the run sheet.",
        "not_waiting" => "That step has begun already.",
        "not_running" => "That step is not running.",
        "not_held" => "That step is not held.",
        "held" => "The step is held: h goes on with it.",
        "busy" => "Its vessel or its circuit is still busy.",
        "nothing_to_undo" => "There is nothing to take back.",
        "unknown_vessel" => "There is no such vessel in this brewhouse.",
        "empty" => "Nothing was written.",
        _ => $"Not now: {Names.Plainly(code)}.",
    };
}
