using System.Collections.Immutable;
using System.Drawing;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;
using BrewDeck.Terminal.Compose;

namespace BrewDeck.Terminal.Panes.Layouts;

/// <summary>Where the parts of the running deck go: composed for each size, not stretched.</summary>
internal static class DeckLayout
{
    private const int Margin = 1;

    /// <summary>The hands' sentences come before what is next but two.</summary>
    private const int NarrowExtra = 3, NarrowNext = 2, WideExtra = 2, WideNext = 4, GrandNext = 9;

    /// <summary>Rows that next, gauges, outlook and timetable take below the cautions, and one more where a step runs by itself; the log goes before a caution's words do.</summary>
    private const int NarrowRest = 8;

    /// <summary>Below this only the step, its countdown and the key are shown. Sizes are of the whole screen.</summary>
    private static readonly Size Smallest = new(60, 18);

    public static ImmutableArray<Placed> Of(DeckScreen screen, Size whole, Rectangle body)
    {
        var inner = body.Width > 2 * Margin ? Rectangle.Inflate(body, -Margin, 0) : body;
        if (whole.Width < Smallest.Width || whole.Height < Smallest.Height) return Minimal(screen, inner);
        if (whole is { Width: >= 160, Height: >= 50 }) return Grand(screen, whole, inner);
        return whole is { Width: >= 110, Height: >= 34 } ? Wide(screen, whole, inner) : Narrow(screen, whole, inner);
    }

    private static ImmutableArray<Placed> Minimal(DeckScreen screen, Rectangle room)
    {
        var fits = BigText.Has(screen.Big) && BigText.Width(screen.Big, BigScale.Smallest) <= room.Width && room.Height >= 7;
        var big = fits
            ? BigText.Lines(screen.Big, BigScale.Smallest, screen.BigTone)
            : [Line.Of(screen.Big, screen.BigTone == Tone.Normal ? Tone.Strong : screen.BigTone)];
        return
        [
            .. new Stack(room, screen.Notation)
                .Add(Block.Alarms, [.. Alarms(screen, room.Width).Take(2)], 0)
                .Add(Block.Headline, screen.Headline.Wrap(room.Width), 1, least: 1)
                .Air(4)
                .Add(Block.Big, big, 0)
                .Add(Block.BigLabel, [Line.Of(screen.BigLabel, Tone.Muted)], 2)
                .Air(5)
                .Add(Block.Hands, [screen.Hands.CutTo(room.Width)], 3)
                .Place(),
        ];
    }

    private static ImmutableArray<Placed> Narrow(DeckScreen screen, Size whole, Rectangle room)
    {
        var airy = room.Height >= 20 ? 1 : 0;
        var (hero, height) = Hero.Compose(screen, Below(room, airy), whole.Height, NarrowExtra);
        // whether the heat is on must show: the circuits give way
        var vesselWidth = Math.Min(Math.Max(room.Width * 29 / 50, GaugeLines.Least(screen.Vessels) + 2), room.Width * 2 / 3);
        var stack = new Stack(Below(room, airy + height), screen.Notation)
            .Add(Block.Alarms, Alarms(screen, room.Width), 0)
            .Air(5)
            .Add(Block.Cautions, CautionLines.Of(screen.CautionLines, room.Width, Math.Max(screen.Alarms.IsEmpty ? 2 : 1, room.Height - airy - height - NarrowRest - Math.Min(1, screen.Background.Length) - Alarms(screen, room.Width).Length)), 0)
            .Air(9)
            .Add(Block.Next, NextLines.Of(screen.Next, room.Width, NarrowNext, screen.Notation), 1)
            .Add(Block.Background, Wrapping.Wrap(screen.Background, room.Width), 3, least: 1)
            .Air(6)
            .AddBeside(
                Block.Vessels, GaugeLines.Of(screen.Vessels, vesselWidth - 2), vesselWidth,
                Block.Circuits, GaugeLines.Of(screen.Circuits, room.Width - vesselWidth), 2)
            .Air(10)
            .Add(Block.Outlook, OutlookLines.Running(screen.Outlook, room.Width), 3, least: 1)
            .Air(7)
            .Add(Block.Strip, StripLines.Of(screen.Strip, screen.StripNow, room.Width), 3)
            .Air(11)
            .Add(Block.Log, Log(screen, room.Width), 8, least: 1);
        return [.. hero, .. stack.Place()];
    }

    private static ImmutableArray<Placed> Wide(DeckScreen screen, Size whole, Rectangle room)
    {
        var (hero, height) = Hero.Compose(screen, Below(room, 1), whole.Height, WideExtra);
        var (columns, strip) = Split(screen, Below(room, height + 2));
        var half = columns.Width / 2 - 2;
        var left = new Rectangle(columns.X, columns.Y, half, columns.Height);
        var right = new Rectangle(columns.X + half + 4, columns.Y, columns.Width - half - 4, columns.Height);
        return [.. hero, .. Work(screen, left, WideNext, withLog: true), .. State(screen, right), .. strip];
    }

    private static ImmutableArray<Placed> Grand(DeckScreen screen, Size whole, Rectangle room)
    {
        var (hero, height) = Hero.Compose(screen, Below(room, 2), whole.Height, WideExtra);
        var (columns, strip) = Split(screen, Below(room, height + 4));
        var third = columns.Width / 3 - 3;
        Rectangle Column(int index) => new(columns.X + index * (third + 4), columns.Y, third, columns.Height);
        return
        [
            .. hero,
            .. Work(screen, Column(0), GrandNext, withLog: false),
            .. State(screen, Column(1)),
            .. new Stack(Column(2), screen.Notation).Add(Block.Log, Headed(LayoutWords.Log(screen.Notation), Log(screen, third)), 0, least: 1).Place(),
            .. strip,
        ];
    }

    /// <summary>What to do now and next.</summary>
    private static IEnumerable<Placed> Work(DeckScreen screen, Rectangle room, int next, bool withLog)
    {
        var stack = new Stack(room, screen.Notation)
            .Add(Block.Alarms, Alarms(screen, room.Width), 0)
            .Air(5)
            .Add(Block.Cautions, CautionLines.Of(screen.CautionLines, room.Width, int.MaxValue), 0, least: 2)
            .Air(5)
            .Add(Block.Next, NextLines.Of(screen.Next, room.Width, next, screen.Notation), 1, least: 2)
            .Air(5)
            .Add(Block.Background, Wrapping.Wrap(screen.Background, room.Width), 2, least: 1);
        if (withLog) stack.Air(5).Add(Block.Log, Headed(LayoutWords.Log(screen.Notation), Log(screen, room.Width)), 8, least: 2);
        return stack.Place();
    }

    /// <summary>How things stand and what they will give.</summary>
    private static IEnumerable<Placed> State(DeckScreen screen, Rectangle room)
    {
        var gauges = GaugeLines.Of([.. screen.Vessels, .. screen.Circuits], room.Width);
        return new Stack(room, screen.Notation)
            .Add(Block.Vessels, gauges[..screen.Vessels.Length], 0)
            .Air(3)
            .Add(Block.Circuits, gauges[screen.Vessels.Length..], 1)
            .Air(3)
            .Add(Block.Outlook, Headed(LayoutWords.Outlook(screen.Notation), OutlookLines.Table(screen.Outlook, room.Width)), 2)
            .Place();
    }

    /// <summary>The timetable along the bottom, and what is left above it.</summary>
    private static (Rectangle Above, IEnumerable<Placed> Strip) Split(DeckScreen screen, Rectangle room)
    {
        var lines = StripLines.Of(screen.Strip, screen.StripNow, room.Width);
        if (lines.IsEmpty) return (room, []);
        var y = room.Bottom - lines.Length - 1;
        return (room with { Height = y - 1 - room.Y }, [new Placed(Block.Strip, new Rectangle(room.X, y, room.Width, lines.Length), lines)]);
    }

    private static Rectangle Below(Rectangle room, int rows) =>
        new(room.X, room.Y + rows, room.Width, Math.Max(0, room.Height - rows));

    private static ImmutableArray<Line> Alarms(DeckScreen screen, int width) => Wrapping.Wrap([.. screen.Alarms, .. screen.Plant], width, indent: 3);

    private static ImmutableArray<Line> Log(DeckScreen screen, int width) =>
        Wrapping.Wrap(screen.Log.Select(Labels.Marked), width, indent: 7);

    private static ImmutableArray<Line> Headed(string heading, ImmutableArray<Line> lines) =>
        lines.IsEmpty ? lines : [Line.Of(heading, Tone.Muted), .. lines];
}
