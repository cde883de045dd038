using BrewDeck.Core.Fermenting;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running.Alarms;
using BrewDeck.Core.Running.Bags;
using BrewDeck.Core.Running.Troubles;

namespace BrewDeck.Core.Running;

/// <summary>What the brewer wants; <see cref="RunDesk"/> decides what of it happens.</summary>
public abstract record RunCommand
{
    private RunCommand()
    {
    }

    /// <summary>Start a step that is due.</summary>
    public sealed record Start(string StepId) : RunCommand;

    /// <param name="Short">Before the temperature or the level that it was for is reached.</param>
    public sealed record Finish(string StepId, bool Short = false) : RunCommand;

    public sealed record Hold(string StepId, string Reason) : RunCommand;

    public sealed record Resume(string StepId) : RunCommand;

    public sealed record Skip(string StepId, string Reason) : RunCommand;

    /// <param name="Confirmed">The brewer has seen that the value is implausible and says it is right.</param>
    public sealed record Take(Reading Reading, bool Confirmed = false) : RunCommand;

    public sealed record Choose(Remedy Remedy) : RunCommand;

    /// <summary>Something goes wrong: one of <see cref="Possible.At"/>.</summary>
    public sealed record Report(Trouble Trouble) : RunCommand;

    /// <summary>What was reported is over.</summary>
    public sealed record Clear(Trouble Trouble) : RunCommand;

    /// <summary>An ingredient that is still to go in is not as planned.</summary>
    public sealed record Weigh(Bag Bag) : RunCommand;

    public sealed record Write(string Text) : RunCommand;

    public sealed record Abort(string Reason) : RunCommand;

    /// <summary>Every alarm that shows has been heard.</summary>
    public sealed record Acknowledge : RunCommand;

    /// <summary>Out of sight for so many minutes, above 0 and up to <see cref="AlarmDesk.MostShelvedMin"/>.</summary>
    public sealed record Shelve(AlarmKey Alarm, double Minutes) : RunCommand;

    /// <summary>Do something about a mishap at the plant of a rehearsal.</summary>
    public sealed record Tend(HandAct Act) : RunCommand;

    /// <summary>Put on record what happens to a rehearsal itself.</summary>
    public sealed record Mark(RehearsalMark Of) : RunCommand;

    /// <summary>What is done after pitching, for weeks after the run is complete.</summary>
    public abstract record After : RunCommand
    {
        private After()
        {
        }

        /// <param name="Confirmed">The brewer has seen that the gravity is above the last one, or low too soon, and says it is right.</param>
        public sealed record ReadFermenter(FermenterReading Reading, bool Confirmed = false) : After;

        public sealed record Add(DatedAddition Addition) : After;

        public sealed record SetDate(DueItem Item) : After;

        /// <param name="Confirmed">The brewer has seen that it is more than there is and says it is right.</param>
        public sealed record Package(Packaging Packaging, bool Confirmed = false) : After;

        /// <summary>The rest is lees.</summary>
        public sealed record EndPackaging : After;

        /// <param name="Rating">1 to 5; null: none.</param>
        public sealed record Taste(string Text, int? Rating) : After;
    }

    /// <summary>Take back the last act that can be taken back.</summary>
    public sealed record Undo : RunCommand;
}
