using BrewDeck.Core.Running;

namespace BrewDeck.Logbook;

/// <summary>Whose doing an event is: the brewer's, or the program's that followed from it by itself.</summary>
internal static class EventActor
{
    public static string Of(RunEvent happened) =>
        happened is AlarmRaised or AlarmCleared || happened.Part > 0 ? "program" : "brewer";
}
