using System.Collections.Immutable;
using System.Drawing;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;
using BrewDeck.Terminal.Compose;

namespace BrewDeck.Terminal.Panes;

/// <summary>
/// Rows to choose from, with the details beside them where there is room, else below. Only rows in sight are drawn (the
/// toolkit's list took 26 ms to draw 20,000).
/// </summary>
internal sealed class ListPane : Pane
{
    private const int Beside = 110;

    private int _first;

    public override IEnumerable<Patch> Of(Screen screen, Size whole, Rectangle room)
    {
        var list = (ListScreen)screen;
        var page = Page(whole, room);
        var details = Details(list, page);
        var told = Cut(Wrapping.Wrap(list.Details, Math.Max(1, details.Width)), details.Height, screen.Notation);
        return [new Patch(told, details), .. Rows(list, Left(page, details))];
    }

    private IEnumerable<Patch> Rows(ListScreen list, Rectangle room)
    {
        if (list.Columns.Any(column => column.Header != "") && room.Height > 2)
        {
            yield return new Patch([ListLines.Header(list.Columns, room.Width)], room with { Height = 1 });
            (room.Y, room.Height) = (room.Y + 1, room.Height - 1);
        }

        room = WithPlace(list, room);
        _first = ListLines.Scroll(_first, list.Selected, list.Rows.Length, Math.Max(1, room.Height));
        var seen = list.Rows.Skip(_first).Take(Math.Max(0, room.Height));
        yield return new Patch([.. seen.Select((row, i) => ListLines.Row(list.Columns, row, _first + i == list.Selected, room.Width))], room, Chosen: list.Selected - _first);
        yield return Place(PlaceLines.Of(_first, list.Rows.Length, room.Height), room.Right + 1, room.Y);
    }

    /// <summary>What has no room is counted, so that nothing is missed without a word.</summary>
    private static ImmutableArray<Line> Cut(ImmutableArray<Line> lines, int height, Notation notation) => height < 2 || lines.Length <= height
        ? lines
        : [.. lines.Take(height - 1), Line.Of(Labels.More(lines.Length - height + 1, notation) + LayoutWords.AllOrders(notation), Tone.Muted)];

    /// <summary>What is left of the room beside the bar that tells of more rows.</summary>
    private static Rectangle WithPlace(ListScreen list, Rectangle room) =>
        PlaceLines.Of(0, list.Rows.Length, room.Height).IsEmpty ? room : room with { Width = room.Width - 2 };

    private static Rectangle Details(ListScreen list, Rectangle room)
    {
        if (list.Details.IsEmpty) return Rectangle.Empty;
        if (room.Width >= Beside)
        {
            var width = room.Width * 2 / 5;
            return new Rectangle(room.Right - width, room.Y, width, room.Height);
        }

        // below: what it needs, but the rows keep half of the room (and what they do not need goes to the details)
        var wanted = Wrapping.Wrap(list.Details, room.Width).Length;
        var height = Math.Min(wanted, Math.Max(room.Height / 2, room.Height - list.Rows.Length - 2) - 1);
        return height < 1 ? Rectangle.Empty : new Rectangle(room.X, room.Bottom - height, room.Width, height);
    }

    private static Rectangle Left(Rectangle room, Rectangle details)
    {
        if (details.IsEmpty) return room;
        return details.Y == room.Y && details.X > room.X
            ? room with { Width = details.X - room.X - 3 }
            : room with { Height = details.Y - room.Y - 1 };
    }
}
