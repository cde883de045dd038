namespace BrewDeck.Deck.Wording;

/// <summary>The few words that a layout makes itself, because only it knows what it has room for.</summary>
public static class LayoutWords
{
    public static string Next(Notation notation) => notation.Text("next");

    public static string Then(Notation notation) => notation.Text("then");

    public static string Outlook(Notation notation) => notation.Text("outlook");

    public static string Log(Notation notation) => notation.Text("log");

    /// <summary>Of lines that there is no room for: "5 more".</summary>
    public static string More(int lines, Notation notation) => notation.Text($"{lines} more");

    /// <param name="marks">The marks with the names of what they stand for; none: nothing was read.</param>
    public static string Read(IReadOnlyCollection<string> marks, Notation notation) =>
        marks.Count > 0 ? notation.Text($"read {string.Join("  ", marks)}") : notation.Text("nothing read yet");

    public static string Curves(bool expected, Notation notation) =>
        expected ? notation.Text("lines planned (faint), expected") : notation.Text("line planned");

    public static string Band(Notation notation) => notation.Text("┃ 80 % band");

    public static string Timetable(Notation notation) => notation.Text("Timetable");

    public static string TimetableBars(Notation notation) => notation.Text("▀ planned   ▄ done or expected   █ both   at the right: its end");

    /// <summary>Where the orders stand whole that had no room on the deck.</summary>
    public static string AllOrders(Notation notation) => notation.Text(": p shows all");
}
