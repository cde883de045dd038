using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Running.Alarms;

namespace BrewDeck.Deck.Wording;

/// <summary>Each alarm in three short sentences: what is wrong, what comes of it, what to do.</summary>
/// <param name="TitleOf">Names a step by its id.</param>
public sealed record AlarmWords(Brewhouse Brewhouse, Notation Notation, Func<string, string> TitleOf)
{
    /// <summary>How soon, in a word that goes with the colour.</summary>
    public static string Priority(AlarmPriority priority) => priority switch
    {
        AlarmPriority.High => "NOW",
        AlarmPriority.Medium => "SOON",
        _ => "WHEN FREE",
    };

    public string Whole(Alarm alarm) => $"{Cause(alarm)} {Consequence(alarm.Kind)} {Action(alarm)}";

    public string Cause(Alarm alarm) => alarm.Kind switch
    {
        AlarmKind.CircuitOverloaded => $"Circuit {alarm.About} draws {Amps(alarm.Value)} of {Amps(alarm.Bound)} A.",
        AlarmKind.VesselTooFull => $"{Vessel(alarm)} holds {Notation.Volume(alarm.Value)}, {Notation.Volume(alarm.Bound)} is the most.",
        AlarmKind.ElementsDry => $"{Vessel(alarm)} is heated with {Notation.Volume(alarm.Value)} in it; its elements need {Notation.Volume(alarm.Bound)}.",
        AlarmKind.BoilUnattended => "The kettle should boil by now.",
        AlarmKind.HeatRunsOn => "The mash should be hot enough by now.",
        AlarmKind.AdditionLate => $"An addition waits: {TitleOf(alarm.About)}.",
        AlarmKind.MashOff => $"The mash reads {Notation.Temp(alarm.Value)}, the rest is at {Notation.Target(alarm.Bound)}.",
        AlarmKind.HandsLate => $"This waits for you: {TitleOf(alarm.About)}.",
        AlarmKind.LimitAhead when alarm.Limit is { } limit => $"Ahead: {LimitWords.Of(limit, Notation)}.",
        _ => $"On hold for long: {TitleOf(alarm.About)}.",
    };

    public static string Consequence(AlarmKind kind) => kind switch
    {
        AlarmKind.CircuitOverloaded => "The breaker trips and the heat stops.",
        AlarmKind.VesselTooFull => "It runs over and scalds.",
        AlarmKind.ElementsDry => "Dry elements burn out and may start a fire.",
        AlarmKind.BoilUnattended => "It may boil over.",
        AlarmKind.HeatRunsOn => "More heat spoils the enzymes.",
        AlarmKind.AdditionLate => "Bitterness and aroma drift with each minute.",
        AlarmKind.MashOff => "The wort ferments less or more than planned.",
        AlarmKind.HandsLate => "The rest of the day moves back.",
        AlarmKind.LimitAhead => "The brewhouse cannot do what is left of the plan.",
        _ => "What follows waits, and vessels cool.",
    };

    public string Action(Alarm alarm) => alarm.Kind switch
    {
        AlarmKind.CircuitOverloaded => "Switch one of its heaters off.",
        AlarmKind.VesselTooFull => "Close its inlet, turn the heat down, draw some off.",
        AlarmKind.ElementsDry => "Switch its heat off at the switch.",
        AlarmKind.BoilUnattended => "Go to the kettle; space when it boils.",
        AlarmKind.HeatRunsOn => "Heat off, stir, read it; then space.",
        AlarmKind.AdditionLate => "Add it, then space.",
        AlarmKind.MashOff => "Stir and read again, or r for ways back.",
        AlarmKind.HandsLate => "Do it, then space.",
        AlarmKind.LimitAhead when alarm.Limit is { } limit => LimitWords.Do(limit, Notation),
        _ => "Space goes on with it.",
    };

    private string Vessel(Alarm alarm) => Names.Sentence(Names.The(Brewhouse, alarm.About));

    private static string Amps(double amps) => Notation.Number(amps, "0.0");
}
