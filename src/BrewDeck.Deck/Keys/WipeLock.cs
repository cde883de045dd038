namespace BrewDeck.Deck.Keys;

/// <summary>
/// The keys ignore everything while they are wiped. Only the word, letter after letter with nothing between, unlocks: a cloth or a
/// knuckle strikes neighbours and repeats, and its letters are neither.
/// </summary>
/// <param name="word">In small letters.</param>
public sealed class WipeLock(string word)
{
    public string Word => word;

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(3);
    private int _typed;
    private DateTimeOffset _at;

    public bool Locked { get; private set; }

    public void Lock() => (Locked, _typed) = (true, 0);

    /// <summary>Takes a key while locked.</summary>
    /// <param name="now">Time of the wall, as hands keep to it.</param>
    public void Strike(KeyStroke stroke, DateTimeOffset now)
    {
        if (_typed > 0 && now - _at > Patience)
            _typed = 0;
        _typed = IsNext(stroke) ? _typed + 1 : 0;
        _at = now;
        Locked = _typed < word.Length;
    }

    private bool IsNext(KeyStroke stroke) =>
        stroke.Name == KeyName.Character && char.ToLowerInvariant(stroke.Character) == word[_typed];
}
