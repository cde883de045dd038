using BrewDeck.Deck;

namespace BrewDeck.Logbook;

/// <summary>Trouble of the log commands as one line each on the error stream.</summary>
internal sealed class ErrorLines(TextWriter errors)
{
    /// <summary>Exit code of trouble with the logbook.</summary>
    private const int Trouble = 4;

    public void Say(string what) => errors.WriteLine($"brewdeck: {SafeText.OneLine(what)}");

    public int Guarded(Func<int> act)
    {
        try
        {
            return act();
        }
        catch (LogbookException e)
        {
            Say(e.Message);
            return Trouble;
        }
    }
}
