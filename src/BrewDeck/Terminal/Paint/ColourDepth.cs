namespace BrewDeck.Terminal.Paint;

/// <summary>How many colours the terminal says it has.</summary>
internal enum ColourDepth
{
    /// <summary>Bold, underline and reverse only.</summary>
    None,
    Sixteen,
    Indexed,
    Direct,
}

internal static class ColourDepths
{
    /// <param name="variable">Reads an environment variable.</param>
    public static ColourDepth From(Func<string, string?> variable)
    {
        var term = variable("TERM") ?? "";
        if (variable("NO_COLOR") is { Length: > 0 } || term is "" or "dumb") return ColourDepth.None;
        if (variable("COLORTERM") is "truecolor" or "24bit" || term.EndsWith("-direct", StringComparison.Ordinal))
            return ColourDepth.Direct;
        return term.Contains("256color", StringComparison.Ordinal) ? ColourDepth.Indexed : ColourDepth.Sixteen;
    }
}
