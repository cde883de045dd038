using System.Collections.Immutable;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;

namespace BrewDeck.Deck;

/// <summary>How a rehearsal runs, and what there is to see at its plant; present only while one does.</summary>
public interface IRehearsalControls
{
    /// <summary>Seconds of the day in one second of the wall, at least 1.</summary>
    double Speed { get; set; }

    bool Paused { get; set; }

    /// <summary>Time on the wall as of the last input: hands keep to it, however fast the day goes. Null: the day is the wall's.</summary>
    DateTimeOffset? Wall => null;

    /// <summary>The brewer does the work; the stand-in only plays the vessels.</summary>
    bool HandsOn { get; set; }

    /// <summary>What the day is dealt, kept with a batch that is opened.</summary>
    RehearsalCard? Card => null;

    /// <summary>What shows itself beyond the dials and waits for an answer, what has waited longest first.</summary>
    IReadOnlyList<Sign> Signs => [];

    /// <summary>What the hands are doing about such things.</summary>
    IReadOnlyList<Tending> Tending => [];

    /// <summary>Thermometer and glass of each vessel that holds something.</summary>
    IReadOnlyList<Dial> Dials => [];

    /// <summary>Takes a sample or looks closely; null: there is nothing to read.</summary>
    Shown? Look(ReadingKind kind, string vessel) => null;

    /// <summary>Lets the day go on at once to where the hands are needed or something shows itself.</summary>
    void Leap()
    {
    }
}

/// <summary>Remembers which exercises were passed.</summary>
public interface IExerciseBook
{
    bool HasPassed(int number);

    /// <summary>On disk when it returns.</summary>
    /// <exception cref="LogbookException">It could not be kept.</exception>
    void Keep(int number, int batch, bool passed, DateTimeOffset now);
}

/// <param name="About">Vessel, circuit or step that it shows at.</param>
/// <param name="Acts">What hands can do about it; empty: only the run sheet's remedies help.</param>
public sealed record Sign(MishapKind Kind, string About, ImmutableArray<HandAct> Acts)
{
    /// <summary>It has come to what it first only threatened: the foam is over the rim.</summary>
    public bool Worse { get; init; }
}

/// <param name="LeftS">For so much longer, seconds.</param>
public sealed record Tending(double LeftS);

/// <param name="TempC">As the thermometer shows it, °C.</param>
/// <param name="StandsL">As the sight glass shows it, litres, grain included.</param>
public sealed record Dial(string Vessel, double TempC, double StandsL);

/// <summary>What an instrument shows.</summary>
/// <param name="Value">In the canonical unit of its kind, uncorrected.</param>
/// <param name="SampleC">Temperature of a sample that was not cooled, °C; null: cooled, or none was drawn.</param>
public sealed record Shown(double Value, double? SampleC);
