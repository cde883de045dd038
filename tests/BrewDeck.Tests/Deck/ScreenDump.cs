using System.Globalization;
using System.Text;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Tests.Deck;

/// <summary>A screen as plain text, to read it and to look for words in it.</summary>
internal static class ScreenDump
{
    public static string Of(Screen screen)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"[{screen.Title}] [{screen.Corner}]\n");
        foreach (var line in Body(screen))
            text.Append(line).Append('\n');
        if (screen.Overlay is { } overlay)
            Add(text, overlay);
        if (screen.Notice is { } notice)
            text.Append(CultureInfo.InvariantCulture, $"notice: {notice}\n");
        return text.Append(string.Join("   ", screen.Keys.Select(k => k.Key + " " + k.Does))).Append('\n').ToString();
    }

    private static IEnumerable<string> Body(Screen screen) => screen switch
    {
        DeckScreen deck => Deck(deck),
        ListScreen list => list.Rows.Select((r, i) => (i == list.Selected ? "> " : "  ") + string.Join(" | ", r.Cells)).Concat(list.Details.Select(d => "    " + d)),
        TextScreen text => text.Lines.Select(l => l.ToString()),
        ChartScreen chart => chart.Drawings.Select((d, i) => (i == chart.Selected ? "> " : "  ") + d.GetType().Name),
        _ => [],
    };

    private static IEnumerable<string> Deck(DeckScreen s) =>
    [
        $"{s.Big} {s.BigLabel} ({s.BigTone})   {s.Headline}",
        .. s.Sentences.Select(l => "  " + l),
        .. s.CautionLines.Select(l => "  ! " + l),
        s.Hands.ToString(),
        .. s.Next.Select(n => $"next {n.Clock} {n.Text}, {n.Length}"),
        .. s.Background.Select(l => "meanwhile " + l),
        .. s.Vessels.Concat(s.Circuits).Select(g => string.Create(CultureInfo.InvariantCulture, $"{g.Name} {g.Fraction:0.00} {g.Text}")),
        .. s.Outlook.Select(o => $"{o.Label} {o.Value} ({o.Band})"),
        string.Join(" ", s.Strip.Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.Label} {p.From:0.00}..{p.To:0.00}"))) + string.Create(CultureInfo.InvariantCulture, $" now {s.StripNow:0.00}"),
        .. s.Log.Select(l => "log " + l),
    ];

    private static void Add(StringBuilder text, Overlay overlay)
    {
        text.Append(CultureInfo.InvariantCulture, $"? {overlay.Question}\n");
        if (overlay is EntryOverlay entry)
            text.Append(CultureInfo.InvariantCulture, $"? [{entry.Initial}] {entry.Hint} / {entry.Fault}\n");
        if (overlay is ChoiceOverlay choice)
        {
            foreach (var line in choice.Lines)
                text.Append(CultureInfo.InvariantCulture, $"? {line}\n");
            for (var i = 0; i < choice.Options.Length; i++)
                text.Append(CultureInfo.InvariantCulture, $"? {(i == choice.Selected ? '>' : ' ')} {string.Join(" | ", choice.Options[i].Cells)}\n");
        }
    }
}
