using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Composing;

/// <summary>What there is to see at the plant of a rehearsal: signs of what is wrong, and the dials for who does the work.</summary>
public static class PlantLines
{
    /// <param name="said">Cautions that the step in hand says already.</param>
    public static ImmutableArray<Line> Of(IRehearsalControls? rehearsal, Brewhouse brewhouse, Cautions said, Notation notation) => rehearsal is null
        ? []
        : [.. rehearsal.Signs.SelectMany(s => Of(s, brewhouse, said, notation)), .. rehearsal.Tending.Select(t => Line.Of(Of(t, notation), Tone.Due)), .. rehearsal.HandsOn && rehearsal.Dials.Count > 0 ? [Dials(rehearsal.Dials, notation)] : Array.Empty<Line>()];

    /// <summary>Until then nothing is as it should be, whatever has been reported.</summary>
    public static string Of(Tending tending, Notation notation) =>
        notation.Text($"Your hands are still at it, {Durations.Short(tending.LeftS)} more; till then it is as it was.");

    private static IEnumerable<Line> Of(Sign sign, Brewhouse brewhouse, Cautions said, Notation notation) =>
    [
        new([new Span(MishapWords.Sign(sign, brewhouse, notation), Tone.Due), new Span(sign.Acts.IsEmpty ? notation.Text(" r: ways back.") : notation.Text(" m: what to do."))]),
        .. CautionWords.Of(MishapWords.CautionsOf(sign.Kind) & ~said, notation).Select(c => Line.Of(c, Tone.Warning)),
    ];

    private static Line Dials(IReadOnlyList<Dial> dials, Notation notation) => Line.Of(
        notation.Text("Dials: ") + string.Join(" · ", dials.Select(d => $"{d.Vessel} {notation.Temp(d.TempC)} {notation.Volume(d.StandsL)}")),
        Tone.Muted);
}
