namespace BrewDeck.Logbook.Moving;

/// <summary>What a merge did.</summary>
/// <param name="Added">Batches that were not here.</param>
/// <param name="Extended">Batches that had gone on elsewhere.</param>
/// <param name="Diverged">Of the added: batches that begin like one here and go on differently; both are kept.</param>
/// <param name="Same">Batches that are here already, whole.</param>
internal sealed record MergeReport(int Added, int Extended, int Diverged, int Same);

/// <summary>
/// Takes the batches of one logbook into another. A batch is known by the hash of its opening, whatever its number; hashes are chained,
/// so that one is the beginning of another exactly when its last hash stands in it. Done twice, the second time finds all of it here.
/// </summary>
internal sealed class LogMerge
{
    private readonly Journal _into;
    private readonly ILookup<string, int> _ofOpening;
    private readonly Dictionary<string, List<int>> _new = new(StringComparer.Ordinal);

    /// <exception cref="Deck.LogbookException">A batch here is damaged.</exception>
    public LogMerge(Journal into)
    {
        _into = into;
        _ofOpening = into.List().Reverse().ToLookup(h => Opening(into.Lines(h.Number)), h => h.Number, StringComparer.Ordinal);
    }

    /// <param name="batches">Each whole; they keep their numbers where those are free.</param>
    /// <exception cref="Deck.LogbookException">One could not be kept.</exception>
    public MergeReport Take(IEnumerable<(int Number, IReadOnlyList<TapeLine> Lines)> batches)
    {
        int added = 0, extended = 0, diverged = 0, same = 0;
        foreach (var (number, lines) in batches)
        {
            var kin = Kin(lines).Select(n => (Number: n, Lines: _into.Lines(n))).ToList();
            if (kin.Exists(k => IsBeginning(lines, k.Lines)))
            {
                same++;
            }
            else if (kin.Find(k => IsBeginning(k.Lines, lines)) is { Lines: not null } shorter)
            {
                _into.Extend(shorter.Number, lines);
                extended++;
            }
            else
            {
                Add(lines, number);
                added++;
                diverged += kin.Count > 0 ? 1 : 0;
            }
        }

        return new(added, extended, diverged, same);
    }

    private IEnumerable<int> Kin(IReadOnlyList<TapeLine> lines) =>
        _ofOpening[Opening(lines)].Concat(_new.GetValueOrDefault(Opening(lines)) ?? []);

    private void Add(IReadOnlyList<TapeLine> lines, int number)
    {
        var taken = _into.Adopt(lines, number);
        if (!_new.TryGetValue(Opening(lines), out var numbers))
            _new[Opening(lines)] = numbers = [];
        numbers.Add(taken);
    }

    private static string Opening(IReadOnlyList<TapeLine> lines) => Convert.ToHexString(lines[0].Hash);

    private static bool IsBeginning(IReadOnlyList<TapeLine> part, IReadOnlyList<TapeLine> whole) =>
        part.Count <= whole.Count && whole[part.Count - 1].Hash.AsSpan().SequenceEqual(part[^1].Hash);
}
