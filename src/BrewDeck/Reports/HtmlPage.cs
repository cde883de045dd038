namespace BrewDeck.Reports;

/// <summary>One self-contained page: no script, nothing fetched, and a policy that forbids both.</summary>
internal static class HtmlPage
{
    private const string Head = """
        <!doctype html>
        <html lang="en">
        <head>
        <meta charset="utf-8">
        <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
        <meta name="viewport" content="width=device-width, initial-scale=1">
        """;

    /// <param name="style">A sheet of this program's own.</param>
    public static string Of(string title, string style, params IEnumerable<Markup> body) =>
        $"{Head}\n{Markup.Tag("title", title)}\n<style>\n{style}\n</style>\n</head>\n{Markup.Tag("body", body)}\n</html>\n";
}
