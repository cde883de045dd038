namespace BrewDeck.Core.Running;

/// <summary>Stable names of why a command cannot be done now (<see cref="Decision.Refused"/>). Each has its words in the deck.</summary>
public static class DecisionCode
{
    public const string NoBatch = "no_batch";
    public const string DayIsOver = "day_is_over";
    public const string NothingToUndo = "nothing_to_undo";
    public const string EmptyNote = "empty_note";
    public const string NoSuchStep = "no_such_step";
    public const string StepNotDue = "step_not_due";
    public const string RemedyOutdated = "remedy_outdated";
    public const string TroubleNotPossible = "trouble_not_possible";
    public const string TroubleNotStanding = "trouble_not_standing";
    public const string BagInAlready = "bag_in_already";
    public const string BagImpossible = "bag_impossible";
    public const string StepNotRunning = "step_not_running";
    public const string StepNotHeld = "step_not_held";
    public const string NoAlarm = "no_alarm";
    public const string ShelvedTooLong = "shelved_too_long";
    public const string OnlyRehearsed = "only_rehearsed";
    public const string ReasonMissing = "reason_missing";
    public const string OverTheBrim = "over_the_brim";
    public const string ReadingImpossible = "reading_impossible";
    public const string NoSuchPlace = "no_such_place";
    public const string NotPitched = "not_pitched";
    public const string GravityAboveOriginal = "gravity_above_original";
    public const string AdditionIncomplete = "addition_incomplete";
    public const string PackagingVolume = "packaging_volume";
    public const string PackagingCo2 = "packaging_co2";
    public const string PackagingCo2Bottles = "packaging_co2_bottles";
    public const string PrimingTemperature = "priming_temperature";
    public const string KegTemperature = "keg_temperature";
    public const string NothingPackaged = "nothing_packaged";
    public const string ReadingInFuture = "reading_in_future";
    public const string ReadingBeforePitch = "reading_before_pitch";
    public const string RatingRange = "rating_range";

    /// <summary>It was accepted and could not be written: the deck says what the store said.</summary>
    public const string StoreTrouble = "store_trouble";
}
