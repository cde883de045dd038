using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running.Alarms;

namespace BrewDeck.Deck.Wording;

/// <summary>Each alarm in three short sentences: what is wrong, what comes of it, what to do.</summary>
/// <param name="TitleOf">Names a step by its id.</param>
public sealed record AlarmWords(Brewhouse Brewhouse, Notation Notation, Func<string, string> TitleOf)
{
    /// <summary>How soon, in a word that goes with the colour.</summary>
    public static string Priority(AlarmPriority priority, Notation notation) => priority switch
    {
        AlarmPriority.High => notation.Text("NOW"),
        AlarmPriority.Medium => notation.Text("SOON"),
        _ => notation.Text("WHEN FREE"),
    };

    /// <summary>The mash is heated by the coil in the liquor tank that day: what is switched off is the pump.</summary>
    public bool ByCoil { get; init; }

    /// <summary>A step that nothing of the brew waits for, such as a tun to clean while the kettle boils; null: none is known.</summary>
    public Func<string, bool>? IsBeside { get; init; }

    public string Whole(Alarm alarm) => $"{Cause(alarm)} {Follows(alarm)} {Action(alarm)}";

    /// <summary><see cref="Consequence"/>, as the day stands.</summary>
    public string Follows(Alarm alarm) => alarm.Kind == AlarmKind.HandsLate && IsBeside?.Invoke(alarm.About) == true
        ? Notation.Text("The brew goes on without it; what dries on is hard to clean.")
        : Consequence(alarm, Notation);

    public string Cause(Alarm alarm) => alarm.Kind switch
    {
        AlarmKind.CircuitOverloaded => Notation.Text($"Circuit {alarm.About} draws {Amps(alarm.Value)} of {Amps(alarm.Bound)} A."),
        AlarmKind.VesselTooFull => Notation.Text($"{Vessel(alarm)} holds {Notation.Volume(alarm.Value)}, {Notation.Volume(alarm.Bound)} is the most."),
        AlarmKind.ElementsDry => Notation.Text($"{Vessel(alarm)} is heated with {Notation.Volume(alarm.Value)} in it; its elements need {Notation.Volume(alarm.Bound)}."),
        AlarmKind.BoilUnattended => Notation.Text("The kettle should boil by now."),
        AlarmKind.HeatRunsOn => Notation.Text("The mash should be hot enough by now."),
        AlarmKind.AdditionLate => Notation.Text($"An addition waits: {TitleOf(alarm.About)}."),
        AlarmKind.MashOff => Notation.Text($"The mash reads {Notation.Temp(alarm.Value)}, the rest is at {Notation.Target(alarm.Bound)}."),
        AlarmKind.HandsLate => Notation.Text($"This waits for you: {TitleOf(alarm.About)}."),
        AlarmKind.LimitAhead when alarm.Limit is { Name: LimitName.PitchInFermenter } warm => $"{LimitWords.Of(warm, Notation)}.",
        AlarmKind.LimitAhead when alarm.Limit is { } limit => Notation.Text($"Ahead: {LimitWords.Of(limit, Notation, Brewhouse)}."),
        _ => Notation.Text($"On hold for long: {TitleOf(alarm.About)}."),
    };

    public static string Consequence(Alarm alarm, Notation notation) => alarm.Kind switch
    {
        AlarmKind.CircuitOverloaded => notation.Text("The breaker trips and the heat stops."),
        AlarmKind.VesselTooFull => notation.Text("It runs over and scalds."),
        AlarmKind.ElementsDry => notation.Text("Dry elements burn out and may start a fire."),
        AlarmKind.BoilUnattended => notation.Text("It may boil over."),
        AlarmKind.HeatRunsOn => notation.Text("More heat spoils the enzymes."),
        AlarmKind.AdditionLate => notation.Text("Bitterness and aroma drift with each minute."),
        AlarmKind.MashOff when alarm.Value < alarm.Bound => notation.Text("The enzymes work slower than planned."),
        AlarmKind.MashOff => notation.Text("The enzymes tire sooner; the wort ferments less."),
        AlarmKind.HandsLate => notation.Text("The rest of the day moves back."),
        AlarmKind.LimitAhead when alarm.About == LimitName.PitchInFermenter => notation.Text("Pitched so warm, the beer gets coarse."),
        AlarmKind.LimitAhead => notation.Text("The brewhouse cannot do what is left of the plan."),
        _ => notation.Text("What follows waits, and vessels cool."),
    };

    public string Action(Alarm alarm) => alarm.Kind switch
    {
        AlarmKind.CircuitOverloaded => Notation.Text("Switch one of its heaters off."),
        AlarmKind.VesselTooFull => Notation.Text("Close its inlet, turn the heat down, draw some off."),
        AlarmKind.ElementsDry => Notation.Text("Switch its heat off at the switch."),
        AlarmKind.BoilUnattended => Notation.Text("Go to the kettle; space when it boils."),
        AlarmKind.HeatRunsOn when ByCoil => Notation.Text("Pump off, so that nothing runs through the coil; stir, read it; then space."),
        AlarmKind.HeatRunsOn => Notation.Text("Heat off, stir, read it; then space."),
        AlarmKind.AdditionLate => Notation.Text("Add it, then space."),
        AlarmKind.MashOff => Notation.Text("Stir and read again, or r for ways back."),
        AlarmKind.HandsLate => Notation.Text("Do it; space when the deck shows it."),
        AlarmKind.LimitAhead when alarm.Limit is { } limit => LimitWords.Do(limit, Notation),
        _ => Notation.Text("Space goes on with it when the deck shows it."),
    };

    private string Vessel(Alarm alarm) => Names.Sentence(Names.The(Brewhouse, alarm.About, Notation));

    private string Amps(double amps) => Notation.Number(amps, "0.0");
}
