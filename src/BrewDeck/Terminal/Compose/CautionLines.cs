using System.Collections.Immutable;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Terminal.Compose;

/// <summary>The cautions of a step: whole sentences while they fit; of the others at least what the danger is, never a count of lines.</summary>
internal static class CautionLines
{
    private const int Indent = 2;

    /// <param name="cautions">Each "danger: what to do".</param>
    /// <param name="rows">At least 1.</param>
    public static ImmutableArray<Line> Of(ImmutableArray<Line> cautions, int width, int rows)
    {
        var whole = Whole(cautions, width);
        for (var kept = cautions.Length - 1; whole.Length > rows && kept >= 0; kept--)
            whole = [.. Whole(cautions[..kept], width), .. Labels.Caution(Dangers(cautions[kept..])).Wrap(width, Indent)];
        return whole;
    }

    private static ImmutableArray<Line> Whole(IEnumerable<Line> cautions, int width) =>
        Wrapping.Wrap(cautions.Select(Labels.Caution), width, Indent);

    private static Line Dangers(ImmutableArray<Line> cautions) =>
        Line.Of(string.Join(". ", cautions.Select(Danger)) + ".", cautions[0].Spans.IsEmpty ? Tone.Normal : cautions[0].Spans[0].Tone);

    private static string Danger(Line caution)
    {
        var text = caution.ToString();
        var colon = text.IndexOf(':', StringComparison.Ordinal);
        return colon > 0 ? text[..colon] : text.TrimEnd('.');
    }
}
