namespace BrewDeck.Profiles;

/// <summary>Finds what was probably meant by a misspelt name.</summary>
internal static class NearestName
{
    /// <summary>
    /// The name with the fewest edits from the one written, or null when all are further than half its length.
    /// </summary>
    public static string? To(string written, IEnumerable<string> known)
    {
        var asked = written.ToLowerInvariant();
        if (asked.Length == 0)
            return null;
        var best = known
            .Select(name => (Name: name, Edits: Edits(asked, name.ToLowerInvariant()))).OrderBy(c => c.Edits)
            .FirstOrDefault();
        return best.Name is not null && best.Edits <= Math.Max(2, written.Length / 2) ? best.Name : null;
    }

    /// <summary>Levenshtein's distance; long texts are compared by their first 64 characters.</summary>
    public static int Edits(string from, string to)
    {
        var a = from.AsSpan(0, Math.Min(64, from.Length));
        var b = to.AsSpan(0, Math.Min(64, to.Length));
        var row = Enumerable.Range(0, b.Length + 1).ToArray();
        for (var i = 1; i <= a.Length; i++)
        {
            var diagonal = row[0]++;
            for (var j = 1; j <= b.Length; j++)
            {
                var swapped = diagonal + (a[i - 1] == b[j - 1] ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(swapped, Math.Min(row[j], row[j - 1]) + 1);
            }
        }

        return row[b.Length];
    }
}
