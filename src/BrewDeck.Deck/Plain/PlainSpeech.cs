using System.Globalization;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Plain;

/// <summary>Screens as lines to be read aloud: the whole of one, or what is new since the one before.</summary>
public static class PlainSpeech
{
    /// <summary>All that the screen says.</summary>
    public static IEnumerable<string> Whole(Screen screen)
    {
        yield return Title(screen);
        foreach (var line in Body(screen))
            yield return line;
        if (screen.Overlay is { } overlay)
        {
            foreach (var line in Asked(overlay))
                yield return line;
        }
    }

    /// <summary>What an input has changed.</summary>
    public static IEnumerable<string> After(Screen screen, Screen before)
    {
        var body = SamePlace(screen, before) ? Changed(screen, before) : Body(screen).Prepend(Title(screen));
        foreach (var line in Notices(screen, null).Concat(body))
            yield return line;
        if (screen.Overlay is { } overlay && !(before.Overlay is { } asked && Asked(asked).SequenceEqual(Asked(overlay))))
        {
            foreach (var line in Asked(overlay))
                yield return line;
        }
    }

    /// <summary>What has come up by itself as time passed: steps, alarms, notices; not every second of a countdown.</summary>
    public static IEnumerable<string> Meanwhile(Screen screen, Screen before) =>
        Notices(screen, before.Notice).Concat(screen is DeckScreen deck && before is DeckScreen earlier ? Changed(deck, earlier) : []);

    private static string Title(Screen screen) => screen.Title.EndsWith('?') ? screen.Title : screen.Title + ".";

    private static bool SamePlace(Screen screen, Screen before) => screen.GetType() == before.GetType() && (screen is DeckScreen || screen.Title == before.Title);

    private static IEnumerable<string> Notices(Screen screen, Line? before) =>
        screen.Notice is { } notice && notice.ToString() != before?.ToString() ? [Toned(notice)] : [];

    private static IEnumerable<string> Body(Screen screen) => screen switch
    {
        DeckScreen deck => Step(deck).Concat(Plant(deck)),
        ListScreen list => list.Rows.Select((row, i) => Row(list, row, i)).Concat(Chosen(list)),
        TextScreen text => text.Lines.Select(l => l.ToString()).Where(l => l.Trim().Length > 0),
        ChartScreen chart => chart.Drawings.Skip(chart.Selected).Take(1).SelectMany(PlainDrawing.Of),
        _ => throw new NotSupportedException(screen.GetType().Name),
    };

    private static IEnumerable<string> Changed(Screen screen, Screen before) => (screen, before) switch
    {
        (DeckScreen deck, DeckScreen earlier) => Changed(deck, earlier),
        (ListScreen list, ListScreen earlier) when SameRows(list, earlier) => list.Selected == earlier.Selected ? [] : Chosen(list),
        (TextScreen text, TextScreen earlier) when text.Lines.Select(l => l.ToString()).SequenceEqual(earlier.Lines.Select(l => l.ToString())) => [],
        _ => Body(screen),
    };

    private static bool SameRows(ListScreen list, ListScreen before) =>
        list.Rows.Length == before.Rows.Length && list.Rows.Zip(before.Rows).All(r => r.First.Cells.SequenceEqual(r.Second.Cells));

    private static IEnumerable<string> Changed(DeckScreen deck, DeckScreen before)
    {
        if (deck.Headline.ToString() != before.Headline.ToString() || deck.Title != before.Title)
            return Step(deck).Concat(News(deck, before));
        return deck.Hands.Spans[0].Tone != before.Hands.Spans[0].Tone ? News(deck, before).Append(deck.Hands.ToString()) : News(deck, before);
    }

    /// <summary>Alarms, and what shows itself at a rehearsal's plant, that did not stand there before.</summary>
    private static IEnumerable<string> News(DeckScreen deck, DeckScreen before)
    {
        var known = before.Alarms.Concat(before.Plant).Select(Gist).ToHashSet();
        return deck.Alarms.Concat(deck.Plant.Where(p => ToneOf(p) >= Tone.Warning)).Where(l => !known.Contains(Gist(l))).Select(Toned);
    }

    /// <summary>Without its numbers: a line whose minutes count on is no news.</summary>
    private static string Gist(Line line) => string.Concat(line.ToString().Where(c => !char.IsDigit(c)));

    private static IEnumerable<string> Step(DeckScreen deck) =>
    [
        $"{deck.Title}: {deck.Headline}.",
        $"{deck.Big} {deck.BigLabel}.",
        .. deck.Sentences.Select(s => s.ToString()),
        .. deck.CautionLines.Select(c => $"Caution: {c}"),
        deck.Hands.ToString(),
        .. deck.Next.Take(2).Select(n => $"Next at {n.Clock}: {n.Text}{(n.Length == "" ? "" : ", " + n.Length)}."),
    ];

    private static IEnumerable<string> Plant(DeckScreen deck) =>
    [
        .. deck.Alarms.Select(Toned),
        .. deck.Background.Select(b => $"Meanwhile: {b}."),
        .. deck.Vessels.Select(v => $"{v.Name}: {v.Text}."),
        .. deck.Outlook.Select(o => $"Outlook, {o.Label}: {o.Value}{(o.Band == "" ? "" : $", 80 % band {o.Band}")}."),
        .. deck.Plant.Select(Toned),
    ];

    private static string Row(ListScreen list, Row row, int index)
    {
        var cells = row.Cells.Select((c, i) => (Cell: c.Trim(), Header: i < list.Columns.Length ? list.Columns[i].Header : ""))
            .Where(c => c.Cell.Length > 0).Select(c => c.Header == "" || c.Header == "recipe" ? c.Cell : $"{c.Header} {c.Cell}");
        return string.Create(CultureInfo.InvariantCulture, $"{index + 1}: {string.Join(", ", cells)}{Mark(row.Tone)}");
    }

    private static IEnumerable<string> Chosen(ListScreen list) => list.Selected < 0
        ? list.Details.Select(Toned)
        : list.Details.Select(Toned).Prepend($"Chosen: {Row(list, list.Rows[list.Selected], list.Selected)}");

    private static IEnumerable<string> Asked(Overlay overlay) => overlay switch
    {
        EntryOverlay entry => [entry.Question, .. entry.Fault is { } fault ? new[] { Toned(fault) } : [entry.Hint.ToString()]],
        ChoiceOverlay choice =>
        [
            choice.Question,
            .. choice.Lines.Select(Toned),
            .. choice.Options.Select((o, i) => string.Create(CultureInfo.InvariantCulture, $"{i + 1}: {string.Join(", ", o.Cells)}")),
        ],
        _ => throw new NotSupportedException(overlay.GetType().Name),
    };

    private static Tone ToneOf(Line line) => line.Spans.IsEmpty ? Tone.Normal : line.Spans.Max(s => s.Tone);

    private static string Toned(Line line) => ToneOf(line) switch
    {
        Tone.Alarm => $"ALARM: {line}",
        Tone.Warning => $"Warning: {line}",
        _ => line.ToString(),
    };

    private static string Mark(Tone tone) => tone is Tone.Warning or Tone.Alarm ? " (off)" : "";
}
