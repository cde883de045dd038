using BrewDeck.Core.Running;

namespace BrewDeck.Deck.Runs;

/// <summary>Rings once when the hands become wanted while nobody touches the keys.</summary>
internal sealed class HandsBell
{
    private string _wanted = "";
    private bool _due;

    /// <param name="rings">False after a key: the brewer stands there already.</param>
    public void Listen(BrewDay? day, DateTimeOffset now, bool rings)
    {
        var wanted = day is null || day.Over ? "" : Wanted(day.Focus(now), day.Ms(now));
        _due |= rings && wanted.Length > 0 && wanted != _wanted;
        _wanted = wanted;
    }

    public bool Take()
    {
        var due = _due;
        _due = false;
        return due;
    }

    private static string Wanted(RunFocus focus, long nowMs) => focus.Act switch
    {
        FocusAct.Finish => focus.StepId,
        FocusAct.Start when focus.DueMs <= nowMs => focus.StepId,
        _ => "",
    };
}
