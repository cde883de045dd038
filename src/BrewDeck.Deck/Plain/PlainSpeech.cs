using System.Globalization;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Plain;

/// <summary>Screens as lines to be read aloud: the whole of one, or what is new since the one before.</summary>
public static class PlainSpeech
{
    /// <summary>Said once where a rehearsal begins, for it goes on by itself.</summary>
    public static string StandIn(Notation notation) =>
        notation.Text("A stand-in brewer does the work, also while a question is open. Type \"own hands\" to do it yourself.");

    /// <summary>All that the screen says.</summary>
    public static IEnumerable<string> Whole(Screen screen, Notation notation)
    {
        yield return Title(screen);
        foreach (var line in Body(screen, notation))
            yield return line;
        if (screen.Overlay is { } overlay)
        {
            foreach (var line in Asked(overlay, notation))
                yield return line;
        }
    }

    /// <summary>What an input has changed.</summary>
    public static IEnumerable<string> After(Screen screen, Screen before, Notation notation)
    {
        var body = SamePlace(screen, before) ? Changed(screen, before, notation) : Body(screen, notation).Prepend(Title(screen));
        foreach (var line in Notices(screen, null, notation).Concat(body))
            yield return line;
        if (screen.Overlay is { } overlay && !(before.Overlay is { } asked && Asked(asked, notation).SequenceEqual(Asked(overlay, notation))))
        {
            foreach (var line in Asked(overlay, notation))
                yield return line;
        }
    }

    /// <summary>What has come up by itself as time passed: steps, alarms, notices; not every second of a countdown.</summary>
    public static IEnumerable<string> Meanwhile(Screen screen, Screen before, Notation notation) =>
        Notices(screen, before.Notice, notation).Concat(screen is DeckScreen deck && before is DeckScreen earlier ? Changed(deck, earlier, notation) : []);

    private static string Title(Screen screen) => screen.Title.EndsWith('?') ? screen.Title : screen.Title + ".";

    private static bool SamePlace(Screen screen, Screen before) => screen.GetType() == before.GetType() && (screen is DeckScreen || screen.Title == before.Title);

    private static IEnumerable<string> Notices(Screen screen, Line? before, Notation notation) =>
        screen.Notice is { } notice && notice.ToString() != before?.ToString() ? [Toned(notice, notation)] : [];

    private static IEnumerable<string> Body(Screen screen, Notation notation) => screen switch
    {
        DeckScreen deck => Step(deck, notation).Concat(Plant(deck, notation)),
        ListScreen list => list.Rows.Select((row, i) => Row(list, row, i, notation)).Concat(Chosen(list, notation)),
        TextScreen text => text.Lines.Select(l => l.ToString()).Where(l => l.Trim().Length > 0),
        ChartScreen chart => chart.Drawings.Skip(chart.Selected).Take(1).SelectMany(x => PlainDrawing.Of(x, notation)),
        _ => throw new NotSupportedException(screen.GetType().Name),
    };

    private static IEnumerable<string> Changed(Screen screen, Screen before, Notation notation) => (screen, before) switch
    {
        (DeckScreen deck, DeckScreen earlier) => Changed(deck, earlier, notation),
        (ListScreen list, ListScreen earlier) when SameRows(list, earlier) => list.Selected == earlier.Selected ? [] : Chosen(list, notation),
        (TextScreen text, TextScreen earlier) when text.Lines.Select(l => l.ToString()).SequenceEqual(earlier.Lines.Select(l => l.ToString())) => [],
        _ => Body(screen, notation),
    };

    private static bool SameRows(ListScreen list, ListScreen before) =>
        list.Rows.Length == before.Rows.Length && list.Rows.Zip(before.Rows).All(r => r.First.Cells.SequenceEqual(r.Second.Cells));

    private static IEnumerable<string> Changed(DeckScreen deck, DeckScreen before, Notation notation)
    {
        if (deck.Headline.ToString() != before.Headline.ToString() || deck.Title != before.Title)
            return Step(deck, notation).Concat(News(deck, before, notation));
        return deck.Hands.Spans[0].Tone != before.Hands.Spans[0].Tone ? News(deck, before, notation).Append(Hands(deck, notation)) : News(deck, before, notation);
    }

    /// <summary>What the deck says of its big key, said of the word for it: there is no key here.</summary>
    private static string Hands(DeckScreen deck, Notation notation)
    {
        var said = deck.Hands.ToString();
        return said == notation.Text("Hands now. Space when it is done.") ? notation.Text("Hands now. Type \"go on\" when it is done.")
            : said == notation.Text("Hands now. Space when you begin.") ? notation.Text("Hands now. Type \"go on\" when you begin.")
            : said == notation.Text("On hold. Space goes on with it.") ? notation.Text("On hold. Type \"go on\" to take it up again.")
            : said == notation.Text("Space: batch, log, fermenter readings.") ? notation.Text("Type \"go on\" for the batch, its log and fermenter readings.")
            : said;
    }

    /// <summary>Alarms, and what shows itself at a rehearsal's plant, that did not stand there before.</summary>
    private static IEnumerable<string> News(DeckScreen deck, DeckScreen before, Notation notation)
    {
        var known = before.Alarms.Concat(before.Plant).Select(Gist).ToHashSet();
        return deck.Alarms.Concat(deck.Plant.Where(p => ToneOf(p) >= Tone.Warning)).Where(l => !known.Contains(Gist(l))).Select(x => Toned(x, notation));
    }

    /// <summary>Without its numbers: a line whose minutes count on is no news.</summary>
    private static string Gist(Line line) => string.Concat(line.ToString().Where(c => !char.IsDigit(c)));

    private static IEnumerable<string> Step(DeckScreen deck, Notation notation) =>
    [
        $"{deck.Title}: {deck.Headline}.",
        $"{Names.Sentence(deck.BigLabel)}: {deck.Big}.",
        .. deck.Sentences.Select(s => s.ToString()),
        .. deck.CautionLines.Select(c => notation.Text($"Caution: {c}")),
        Hands(deck, notation),
        .. deck.Next.Take(2).Select(n => notation.Text($"Next at {n.Clock}: {n.Text}{(n.Length == "" ? "" : ", " + n.Length)}.")),
    ];

    private static IEnumerable<string> Plant(DeckScreen deck, Notation notation) =>
    [
        .. deck.Alarms.Select(x => Toned(x, notation)),
        .. deck.Background.Select(b => notation.Text($"Meanwhile: {b}.")),
        .. deck.Vessels.Select(v => $"{v.Name}: {v.Text}."),
        .. deck.Outlook.Select(o => notation.Text($"Outlook, {o.Label.TrimEnd(':')}: {o.Value}{(o.Band == "" ? "" : notation.Text($", 80 % band {o.Band}"))}.")),
        .. deck.Plant.Select(x => Toned(x, notation)),
    ];

    private static string Row(ListScreen list, Row row, int index, Notation notation)
    {
        // of a name and its value both are plain without their heads
        var headed = list.Columns.Length > 2;
        var cells = row.Cells.Select((c, i) => (Cell: c.Trim(), Header: i < list.Columns.Length ? list.Columns[i].Header : ""))
            .Where(c => c.Cell.Length > 0).Select(c => !headed || c.Header == "" || c.Header == "recipe" ? c.Cell : $"{c.Header} {c.Cell}");
        return string.Create(CultureInfo.InvariantCulture, $"{index + 1}: {string.Join(", ", cells)}{Mark(row.Tone, notation)}");
    }

    private static IEnumerable<string> Chosen(ListScreen list, Notation notation) => list.Selected < 0
        ? list.Details.Select(x => Toned(x, notation))
        : list.Details.Select(x => Toned(x, notation)).Prepend(notation.Text($"The cursor is on {Row(list, list.Rows[list.Selected], list.Selected, notation)}"));

    private static IEnumerable<string> Asked(Overlay overlay, Notation notation) => overlay switch
    {
        EntryOverlay entry => [entry.Question, .. entry.Fault is { } fault ? new[] { Toned(fault, notation) } : [entry.Hint.ToString()]],
        ChoiceOverlay choice =>
        [
            choice.Question,
            .. choice.Lines.Select(x => Toned(x, notation)),
            .. choice.Options.Select((o, i) => string.Create(CultureInfo.InvariantCulture, $"{i + 1}: {string.Join(", ", o.Cells)}")),
        ],
        _ => throw new NotSupportedException(overlay.GetType().Name),
    };

    private static Tone ToneOf(Line line) => line.Spans.IsEmpty ? Tone.Normal : line.Spans.Max(s => s.Tone);

    private static string Toned(Line line, Notation notation) => ToneOf(line) switch
    {
        Tone.Alarm => notation.Text($"ALARM: {line}"),
        Tone.Warning => notation.Text($"Warning: {line}"),
        _ => line.ToString(),
    };

    private static string Mark(Tone tone, Notation notation) => tone is Tone.Warning or Tone.Alarm ? notation.Text(" (off)") : "";
}
