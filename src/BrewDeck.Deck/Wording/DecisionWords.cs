namespace BrewDeck.Deck.Wording;

/// <summary>Why a command cannot be done now.</summary>
public static class DecisionWords
{
    public static string Refused(string code) => code switch
    {
        "no_batch" => "No batch is open.",
        "day_is_over" => "The day is over; nothing more can be done in this batch.",
        "nothing_to_undo" => "There is nothing to take back.",
        "empty_note" => "Nothing was written.",
        "no_such_step" => "That step is not on the run sheet any more.",
        "step_not_due" => "Not yet: what comes before it in the same vessel is not done.",
        "remedy_outdated" => "The day has gone on since that was offered: r shows what helps now.",
        "trouble_not_possible" => "That cannot be wrong now: f shows what can.",
        "trouble_not_standing" => "That is over already.",
        "bag_in_already" => "That has gone in already; nothing of it is left to weigh.",
        "bag_impossible" => "That cannot be: at most five times what is planned, and shares as a label has them.",
        "step_not_running" => "That step is not running.",
        "step_not_held" => "That step is not held.",
        "no_alarm" => "No alarm waits to be heard.",
        "shelved_too_long" => "An alarm is shelved for an hour at most.",
        "only_rehearsed" => "That is for rehearsals only.",
        "reason_missing" => "Say why.",
        "reading_impossible" => "No instrument can show that.",
        "no_such_place" => "There is nothing of that kind to read there.",
        "not_pitched" => "This batch has not been pitched.",
        "gravity_above_original" => "That is above the original gravity; beer does not gain extract.",
        "addition_incomplete" => "Write how much of what.",
        "packaging_volume" => "Write how much beer, more than nothing.",
        "packaging_co2" => "Write 0.5 to 5 volumes of CO2.",
        "packaging_temperature" => "Write a temperature of beer, -2 to 40 °C.",
        "rating_range" => "Rate from 1 to 5.",
        _ => $"Not now: {Names.Plainly(code)}.",
    };
}
