using BrewDeck.Core.Fermenting;
namespace BrewDeck.Deck.Wording;

/// <summary>Why a command cannot be done now.</summary>
public static class DecisionWords
{
    public static string Refused(string code, Notation notation) => code switch
    {
        "no_batch" => notation.Text("No batch is open."),
        "day_is_over" => notation.Text("The day is over; nothing more can be done in this batch."),
        "nothing_to_undo" => notation.Text("There is nothing to take back."),
        "empty_note" => notation.Text("Nothing was written."),
        "no_such_step" => notation.Text("That step is not on the run sheet any more."),
        "step_not_due" => notation.Text("Not yet: what comes before it in the same vessel is not done."),
        "remedy_outdated" => notation.Text("The day has gone on since that was offered: r shows what helps now."),
        "trouble_not_possible" => notation.Text("That cannot be wrong now: f shows what can."),
        "trouble_not_standing" => notation.Text("That is over already."),
        "bag_in_already" => notation.Text("That has gone in already; nothing of it is left to weigh."),
        "bag_impossible" => notation.Text("That cannot be: at most five times what is planned, and shares as a label has them."),
        "step_not_running" => notation.Text("That step is not running."),
        "step_not_held" => notation.Text("That step is not held."),
        "no_alarm" => notation.Text("No alarm waits to be heard."),
        "shelved_too_long" => notation.Text("An alarm is shelved for an hour at most."),
        "only_rehearsed" => notation.Text("That is for rehearsals only."),
        "reason_missing" => notation.Text("Say why."),
        "over_the_brim" => notation.Text("That is more than the vessel holds."),
        "reading_impossible" => notation.Text("No instrument can show that."),
        "no_such_place" => notation.Text("There is nothing of that kind to read there."),
        "not_pitched" => notation.Text("This batch has not been pitched."),
        "gravity_above_original" => notation.Text("That is above the original gravity; beer does not gain extract."),
        "addition_incomplete" => notation.Text("Write how much of what."),
        "packaging_volume" => notation.Text("Write how much beer, more than nothing."),
        "packaging_co2" => notation.Text($"Write {Volumes(PackagingRules.LeastCo2Volumes, notation)} to {Volumes(PackagingRules.MostCo2Volumes, notation)} volumes of CO2."),
        "packaging_co2_bottles" => notation.Text($"Write {Volumes(PackagingRules.LeastCo2Volumes, notation)} to {Volumes(PackagingRules.MostInBottles, notation)} volumes of CO2: no bottle for beer is made for more (common practice, no source)."),
        "priming_temperature" => notation.Text($"Priming is reckoned for {notation.Target(0)} to {notation.Target(PackagingRules.HottestC(PackageKind.Bottles))}; for warmer beer write {notation.Target(PackagingRules.HottestC(PackageKind.Bottles))}, which primes a little less."),
        "keg_temperature" => notation.Text($"Keg pressure is reckoned for beer of {notation.Target(0)} to {notation.Target(PackagingRules.HottestC(PackageKind.Keg))}: write one of these."),
        "nothing_packaged" => notation.Text("Nothing has been packaged yet."),
        "reading_in_future" => notation.Text("That day is still to come: write one up to today."),
        "reading_before_pitch" => notation.Text("That day is before the yeast was pitched: write one since then."),
        "rating_range" => notation.Text("Rate from 1 to 5."),
        _ => notation.Text($"Not now: {Names.Plainly(code)}."),
    };

    private static string Volumes(double co2, Notation notation) => notation.Number(co2, "0.#");
}
