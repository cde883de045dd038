using BrewDeck.Core.Fermenting;
using BrewDeck.Core.Running;

namespace BrewDeck.Logbook;

/// <summary>A run's status by its name in files, and which events can change it.</summary>
internal static class BatchStatus
{
    public static string Name(RunStatus status) => status.ToString().ToLowerInvariant();

    /// <returns>Idle for a name that this version does not know: the events say it better.</returns>
    public static RunStatus Of(string name) =>
        Enum.TryParse<RunStatus>(name, ignoreCase: true, out var status) ? status : RunStatus.Idle;

    public static bool Ended(RunStatus status) => status is RunStatus.Complete or RunStatus.Aborted;

    /// <summary>Readings, remedies, notes and alarms leave it as it is; they are also the many.</summary>
    public static bool MayMove(RunEvent happened) => happened is not (ReadingTaken or RemedyChosen or BagWeighed or NoteWritten or TroubleReported or TroubleCleared
        or AlarmRaised or AlarmCleared or AlarmAcknowledged or AlarmShelved or RehearsalEvent) && !FermentFold.Belongs(happened);
}
