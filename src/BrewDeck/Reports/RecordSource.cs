using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Wording;
using BrewDeck.Logbook;

namespace BrewDeck.Reports;

/// <summary>All that a batch record is made of.</summary>
/// <param name="Lines">The tape.</param>
internal sealed record RecordSource(int Number, IReadOnlyList<TapeLine> Lines, IReadOnlyList<RunEvent> Events, RunState State, Notation Notation)
{
    public BatchOpened Opened => (BatchOpened)Events[0];

    public Plan Plan => Opened.Plan;

    /// <summary>What the day has come to or is expected to, with its bands.</summary>
    public Outlook Came { get; } = Forecasts.At(State, Events[^1].AtMs).Outlook;

    /// <summary>Unix ms of second 0 of the day; of the opening while it has not begun.</summary>
    public long DayStartMs => State.DayStartMs ?? Opened.AtMs;

    /// <exception cref="FormatException">A line is not an event that this version knows.</exception>
    public static RecordSource Of(int number, IReadOnlyList<TapeLine> lines, Notation notation)
    {
        var events = lines.Select(line => line.ToEvent()).ToList();
        return new(number, lines, events, RunFold.Of(events), notation);
    }

    public string Title(string stepId) => State.Step(stepId) is { } run ? StepTitles.Of(run, Plan, Notation) : Undone(stepId) is { } spec ? StepTitles.Of(new RunStep(spec, RunStatus.Idle), Plan, Notation) : stepId;

    /// <summary>A step of a remedy that was taken back: it is on no sheet any more.</summary>
    private StepSpec? Undone(string stepId) => Events.OfType<RemedyChosen>().SelectMany(e => e.Remedy.Added).FirstOrDefault(s => s.Id == stepId);

    /// <summary>To the second; with its date where that is not the day's own.</summary>
    public string Clock(long ms) => Dated(ms, Notation.Local(ms).ToString("HH:mm:ss", System.Globalization.CultureInfo.InvariantCulture));

    /// <summary>To the minute, as <see cref="Clock"/>.</summary>
    public string Minute(long ms) => Dated(ms, Notation.Clock(ms));

    private string Dated(long ms, string clock) => Notation.Local(ms).Date == Notation.Local(DayStartMs).Date ? clock : $"{Notation.Date(ms)[..10]} {clock}";
}
