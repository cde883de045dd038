using BrewDeck.Core.Fermenting;
using BrewDeck.Core.Running;

namespace BrewDeck.Deck.Wording;

/// <summary>Why a command cannot be done now.</summary>
public static class DecisionWords
{
    public static string Refused(string code, Notation notation) => code switch
    {
        DecisionCode.NoBatch => notation.Text("No batch is open."),
        DecisionCode.DayIsOver => notation.Text("The day is over; nothing more can be done in this batch."),
        DecisionCode.NothingToUndo => notation.Text("There is nothing to take back."),
        DecisionCode.EmptyNote => notation.Text("Nothing was written."),
        DecisionCode.NoSuchStep => notation.Text("That step is not on the run sheet any more."),
        DecisionCode.StepNotDue => notation.Text("Not yet: what comes before it in the same vessel is not done."),
        DecisionCode.RemedyOutdated => notation.Text("The day has gone on since that was offered: r shows what helps now."),
        DecisionCode.TroubleNotPossible => notation.Text("That cannot be wrong now: f shows what can."),
        DecisionCode.TroubleNotStanding => notation.Text("That is over already."),
        DecisionCode.BagInAlready => notation.Text("That has gone in already; nothing of it is left to weigh."),
        DecisionCode.BagImpossible => notation.Text("That cannot be: at most five times what is planned, and shares as a label has them."),
        DecisionCode.StepNotRunning => notation.Text("That step is not running."),
        DecisionCode.StepNotHeld => notation.Text("That step is not held."),
        DecisionCode.NoAlarm => notation.Text("No alarm waits to be heard."),
        DecisionCode.ShelvedTooLong => notation.Text("An alarm is shelved for an hour at most."),
        DecisionCode.OnlyRehearsed => notation.Text("That is for rehearsals only."),
        DecisionCode.ReasonMissing => notation.Text("Say why."),
        DecisionCode.OverTheBrim => notation.Text("That is more than the vessel holds."),
        DecisionCode.ReadingImpossible => notation.Text("No instrument can show that."),
        DecisionCode.NoSuchPlace => notation.Text("There is nothing of that kind to read there."),
        DecisionCode.NotPitched => notation.Text("This batch has not been pitched."),
        DecisionCode.GravityAboveOriginal => notation.Text("That is above the original gravity; beer does not gain extract."),
        DecisionCode.AdditionIncomplete => notation.Text("Write how much of what."),
        DecisionCode.PackagingVolume => notation.Text("Write how much beer, more than nothing."),
        DecisionCode.PackagingCo2 => notation.Text($"Write {Volumes(PackagingRules.LeastCo2Volumes, notation)} to {Volumes(PackagingRules.MostCo2Volumes, notation)} volumes of CO2."),
        DecisionCode.PackagingCo2Bottles => notation.Text($"Write {Volumes(PackagingRules.LeastCo2Volumes, notation)} to {Volumes(PackagingRules.MostInBottles, notation)} volumes of CO2: no bottle for beer is made for more (common practice, no source)."),
        DecisionCode.PrimingTemperature => notation.Text($"Priming is reckoned for {notation.Target(0)} to {notation.Target(PackagingRules.HottestC(PackageKind.Bottles))}; for warmer beer write {notation.Target(PackagingRules.HottestC(PackageKind.Bottles))}, which primes a little less."),
        DecisionCode.KegTemperature => notation.Text($"Keg pressure is reckoned for beer of {notation.Target(0)} to {notation.Target(PackagingRules.HottestC(PackageKind.Keg))}: write one of these."),
        DecisionCode.NothingPackaged => notation.Text("Nothing has been packaged yet."),
        DecisionCode.ReadingInFuture => notation.Text("That day is still to come: write one up to today."),
        DecisionCode.ReadingBeforePitch => notation.Text("That day is before the yeast was pitched: write one since then."),
        DecisionCode.RatingRange => notation.Text("Rate from 1 to 5."),
        _ => notation.Text($"Not now: {Names.Plainly(code)}."),
    };

    private static string Volumes(double co2, Notation notation) => notation.Number(co2, "0.#");
}
