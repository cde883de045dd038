using System.Collections.Immutable;
using System.Drawing;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;
using BrewDeck.Terminal.Compose;

namespace BrewDeck.Terminal.Panes.Layouts;

/// <summary>What is read from three metres: the large digits, and beside them the step and what the hands do.</summary>
internal static class Hero
{
    private const int Apart = 3;
    private const int WidestText = 90;
    private const int LongestHeadline = 2;

    /// <summary>The digits keep the room of <c>00:00</c>, so that the text beside them does not jump at ten minutes.</summary>
    private const string Usual = "00:00";

    /// <param name="extra">Rows below the digits that the sentences may take before they are cut.</param>
    public static (ImmutableArray<Placed> Placed, int Height) Compose(DeckScreen screen, Rectangle room, int screenRows, int extra)
    {
        var scale = Scale(screen.Big, room.Width, screenRows);
        var big = Big(screen, scale, out var bigWidth);
        var x = room.X + bigWidth + Apart;
        var width = Math.Min(WidestText, room.Width - bigWidth - Apart);
        var headline = screen.Headline.Wrap(width);
        if (headline.Length > LongestHeadline) headline = headline[..LongestHeadline];
        var rows = Math.Max(5, scale.Rows) + extra - headline.Length;
        if (screen.ListsFirst && Wrapping.Wrap(screen.Sentences, width).Length > rows) return Listed(screen, room);
        var sentences = Sentences(screen, width, rows);
        var height = Math.Max(big.Length, headline.Length + sentences.Length);
        ImmutableArray<Placed> placed =
        [
            new(Block.Big, new Rectangle(room.X, room.Y, bigWidth, big.Length), big),
            new(Block.Headline, new Rectangle(x, room.Y, width, headline.Length), headline),
            new(Block.Sentences, new Rectangle(x, room.Y + headline.Length, width, sentences.Length), sentences),
            Label(screen, new Rectangle(room.X, room.Y + height, bigWidth, 1)),
            new(Block.Hands, new Rectangle(x, room.Y + height, width, 1), [screen.Hands.CutTo(width)]),
        ];
        return (placed, height + 1);
    }

    /// <summary>A list that is worked through, over the whole width; the countdown stands small beside the step.</summary>
    private static (ImmutableArray<Placed> Placed, int Height) Listed(DeckScreen screen, Rectangle room)
    {
        int big = Lines.Width(screen.Big), label = Lines.Width(screen.BigLabel), width = Math.Max(1, room.Width - big - label - 1 - Apart);
        var headline = screen.Headline.Wrap(width);
        if (headline.Length > LongestHeadline) headline = headline[..LongestHeadline];
        var sentences = Sentences(screen, room.Width, room.Height - headline.Length - 1);
        var end = headline.Length + sentences.Length;
        ImmutableArray<Placed> placed =
        [
            new(Block.Headline, new Rectangle(room.X, room.Y, width, headline.Length), headline),
            new(Block.Big, new Rectangle(room.X + width + Apart, room.Y, big, 1), [Line.Of(screen.Big, screen.BigTone == Tone.Normal ? Tone.Strong : screen.BigTone)]),
            Label(screen, new Rectangle(room.X + width + Apart + big + 1, room.Y, label, 1)),
            new(Block.Sentences, new Rectangle(room.X, room.Y + headline.Length, room.Width, sentences.Length), sentences),
            new(Block.Hands, new Rectangle(room.X, room.Y + end, room.Width, 1), [screen.Hands.CutTo(room.Width)]),
        ];
        return (placed, end + 1);
    }

    /// <summary>
    /// The largest digits that leave the text beside them three eighths of the width, and the rest of the screen about
    /// three quarters of the rows.
    /// </summary>
    private static BigScale Scale(string big, int width, int screenRows)
    {
        var text = BigText.Has(big) && big.Length > Usual.Length ? big : Usual;
        var wanted = BigScale.LargestFirst.Where(scale =>
            scale.Rows <= 0.27 * screenRows && 8 * (width - BigText.Width(text, scale) - Apart) >= 3 * width);
        return wanted.FirstOrDefault(BigScale.Smallest);
    }

    private static ImmutableArray<Line> Big(DeckScreen screen, BigScale scale, out int width)
    {
        var usual = BigText.Width(Usual, scale);
        if (!BigText.Has(screen.Big))
        {
            width = Math.Max(usual, Lines.Width(screen.Big));
            return [Line.Of(screen.Big, screen.BigTone)];
        }

        var wide = width = Math.Max(usual, BigText.Width(screen.Big, scale));
        return [.. BigText.Lines(screen.Big, scale, screen.BigTone).Select(line => line.Fit(wide, right: true))];
    }

    private static ImmutableArray<Line> Sentences(DeckScreen screen, int width, int rows)
    {
        var all = Wrapping.Wrap(screen.Sentences, width);
        return all.Length <= rows ? all : [.. all[..Math.Max(0, rows - 1)], Line.Of(Labels.More(all.Length - rows + 1, screen.Notation) + LayoutWords.AllOrders(screen.Notation), Tone.Muted)];
    }

    private static Placed Label(DeckScreen screen, Rectangle where)
    {
        var tone = screen.BigTone is Tone.Normal or Tone.Strong ? Tone.Muted : screen.BigTone;
        return new Placed(Block.BigLabel, where, [Line.Of(screen.BigLabel, tone).Fit(where.Width, right: true)]);
    }
}
