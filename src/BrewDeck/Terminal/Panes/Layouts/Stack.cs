using System.Collections.Immutable;
using System.Drawing;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;
using BrewDeck.Terminal.Compose;

namespace BrewDeck.Terminal.Panes.Layouts;

/// <summary>
/// Blocks one under the other in a column of a given height. Each names the fewest rows it can do with; what is over goes
/// to the blocks in the order of their rank until each has all its rows. Where not even the fewest fit, the highest ranks
/// go without.
/// </summary>
/// <param name="notation">For what is said of lines that do not fit.</param>
internal sealed class Stack(Rectangle room, Notation notation)
{
    private readonly List<Item> _items = [];

    public Stack Add(Block block, ImmutableArray<Line> lines, int rank, int least = int.MaxValue)
    {
        if (!lines.IsEmpty) _items.Add(new Item([(block, 0, room.Width, lines)], lines.Length, rank, least));
        return this;
    }

    /// <summary>Two blocks side by side.</summary>
    public Stack AddBeside(Block left, ImmutableArray<Line> leftLines, int leftWidth, Block right, ImmutableArray<Line> rightLines, int rank)
    {
        var rows = Math.Max(leftLines.Length, rightLines.Length);
        if (rows > 0)
            _items.Add(new Item(
                [(left, 0, leftWidth, leftLines), (right, leftWidth, room.Width - leftWidth, rightLines)], rows, rank, rows));
        return this;
    }

    /// <summary>A blank row, if there is room for it; never two, where a block between them has nothing to say.</summary>
    public Stack Air(int rank)
    {
        if (_items is [.., { Parts.IsEmpty: true } before])
        {
            rank = Math.Min(rank, before.Rank);
            _items.Remove(before);
        }

        _items.Add(new Item([], 1, rank, 0));
        return this;
    }

    public IEnumerable<Placed> Place()
    {
        var rows = Share();
        var y = room.Y;
        for (var i = 0; i < _items.Count; i++)
        {
            if (rows[i] == 1 && _items[i] is { Rows: > 1, Parts: [var only, _] } && !only.Lines.IsEmpty)
            {
                yield return new Placed(only.Block, new Rectangle(room.X, y++, room.Width, 1), [First(_items[i].Parts.Sum(p => p.Lines.Length), only.Lines[0])]);
                continue;
            }

            foreach (var (block, x, width, lines) in _items[i].Parts)
            {
                var height = Math.Min(rows[i], lines.Length);
                if (height > 0) yield return new Placed(block, new Rectangle(room.X + x, y, width, height), Cut(lines, height, block));
            }

            y += rows[i];
        }
    }

    /// <summary>Of blocks that stand beside each other, where there is one row for them: the first line, and how many more there are.</summary>
    private Line First(int lines, Line first)
    {
        var more = Line.Of("  " + Labels.More(lines - 1, notation), Tone.Muted);
        return Lines.Join(first.CutTo(room.Width - more.Width()), more);
    }

    /// <summary>Of the log, whose newest lines come first, what fits; elsewhere the first lines, and how many more there are.</summary>
    private ImmutableArray<Line> Cut(ImmutableArray<Line> lines, int height, Block block)
    {
        if (lines.Length <= height) return lines;
        if (block == Block.Log) return lines[..height];
        return height == 1
            ? [lines[0]]
            : [.. lines[..(height - 1)], Line.Of(Labels.More(lines.Length - height + 1, notation), Tone.Muted)];
    }

    private int[] Share()
    {
        var rows = new int[_items.Count];
        var over = room.Height;
        var ranked = Enumerable.Range(0, rows.Length).OrderBy(i => _items[i].Rank).ToList();
        foreach (var i in ranked) over -= rows[i] = Math.Min(over, Math.Min(_items[i].Least, _items[i].Rows));
        foreach (var i in ranked)
        {
            var more = Math.Min(over, _items[i].Rows - rows[i]);
            rows[i] += more;
            over -= more;
        }

        return rows;
    }

    private sealed record Item(ImmutableArray<(Block Block, int X, int Width, ImmutableArray<Line> Lines)> Parts, int Rows, int Rank, int Least);
}
