using System.Text;
using BrewDeck.Deck.Screens;
using BrewDeck.Terminal.Paint;
using CsCheck;
using Terminal.Gui.Drawing;
using Terminal.Gui.Drivers;

namespace BrewDeck.SystemTests.Terminal;

public sealed class FramePainterTests
{
    private const int Columns = 12;
    private const int Rows = 4;

    private static readonly string[] Graphemes = [" ", "a", "é", "█", "━", "°", "界", "…", ""];

    private static readonly Gen<Cell> AnyCell = Gen.Select(
        Gen.Int[0, Graphemes.Length - 1], Gen.Int[0, 5], Gen.Int[0, 4],
        (text, tone, surface) => new Cell(Look.Dark.Ink((Tone)tone, (Surface)surface), Grapheme: Graphemes[text]));

    /// <summary>A list of changes a frame; a frame of many changes is as good as a new screen.</summary>
    private static readonly Gen<(int Row, int Column, Cell Cell)[][]> Frames =
        Gen.Select(Gen.Int[0, Rows - 1], Gen.Int[0, Columns - 1], AnyCell).Array[0, 20].Array[1, 6];

    [Fact]
    public void Painting_what_differs_gives_the_same_screen_as_painting_all() => Frames.Sample(frames =>
    {
        var cells = Blank();
        var painter = new FramePainter(ColourDepth.Direct, GlyphSet.Full);
        var seen = new WideTerminal(Columns, Rows);
        foreach (var frame in frames)
        {
            foreach (var (row, column, cell) in frame) cells[row, column] = cell;
            seen.Feed(painter.Paint(cells, new Cursor()));
            var whole = new WideTerminal(Columns, Rows);
            whole.Feed(new FramePainter(ColourDepth.Direct, GlyphSet.Full).Paint(cells, new Cursor()));
            if (!seen.Same(whole)) return false;
        }

        return true;
    });

    [Fact]
    public void Nothing_is_written_when_nothing_has_changed()
    {
        var painter = new FramePainter(ColourDepth.Direct, GlyphSet.Full);
        Assert.NotEqual("", painter.Paint(Blank(), new Cursor()));
        Assert.Equal("", painter.Paint(Blank(), new Cursor()));
    }

    [Fact]
    public void A_frame_is_one_synchronized_update()
    {
        var frame = new FramePainter(ColourDepth.Direct, GlyphSet.Full).Paint(Blank(), new Cursor());
        Assert.StartsWith("\e[?2026h", frame, StringComparison.Ordinal);
        Assert.EndsWith("\e[?2026l", frame, StringComparison.Ordinal);
        Assert.Equal(1, frame.Split("2026h").Length - 1);
    }

    [Fact]
    public void One_changed_cell_costs_few_bytes()
    {
        var painter = new FramePainter(ColourDepth.Direct, GlyphSet.Full);
        var cells = Blank();
        painter.Paint(cells, new Cursor());
        cells[1, 5] = cells[1, 5] with { Grapheme = "7" };
        Assert.InRange(Encoding.UTF8.GetByteCount(painter.Paint(cells, new Cursor())), 10, 70);
    }

    [Fact]
    public void After_forgetting_all_is_painted_again()
    {
        var painter = new FramePainter(ColourDepth.Direct, GlyphSet.Full);
        var first = painter.Paint(Blank(), new Cursor());
        painter.Forget();
        Assert.Equal(first, painter.Paint(Blank(), new Cursor()));
    }

    [Fact]
    public void The_cursor_is_put_back_after_painting_and_hidden_when_it_goes()
    {
        var painter = new FramePainter(ColourDepth.Direct, GlyphSet.Full);
        var terminal = new MiniTerminal(Columns, Rows);
        var cells = Blank();
        var at = new Cursor { Position = new(3, 2), Style = CursorStyle.BlinkingBar };
        terminal.Feed(painter.Paint(cells, at));
        cells[0, 0] = cells[0, 0] with { Grapheme = "x" };
        terminal.Feed(painter.Paint(cells, at));
        Assert.Equal((3, 2), terminal.Cursor);
        Assert.Contains(25, terminal.Modes);
        Assert.Equal("", painter.Paint(cells, at));
        terminal.Feed(painter.Paint(cells, new Cursor()));
        Assert.DoesNotContain(25, terminal.Modes);
    }

    [Fact]
    public void No_cell_can_send_a_command()
    {
        var cells = Blank();
        cells[0, 0] = new Cell(Look.Dark.Ink(Tone.Normal), Grapheme: "\e");
        cells[0, 1] = new Cell(Look.Dark.Ink(Tone.Normal), Grapheme: "\u009b");
        var frame = new FramePainter(ColourDepth.None, GlyphSet.Full).Paint(cells, new Cursor());
        Assert.DoesNotContain("\u009b", frame, StringComparison.Ordinal);
        Assert.Contains("\e[1;1H\e[0m  ", frame, StringComparison.Ordinal);
    }

    private static Cell[,] Blank()
    {
        var cells = new Cell[Rows, Columns];
        for (var row = 0; row < Rows; row++)
            for (var column = 0; column < Columns; column++)
                cells[row, column] = new Cell(Look.Dark.Ink(Tone.Normal), Grapheme: " ");
        return cells;
    }
}
