using BrewDeck.Core.Running;

namespace BrewDeck.Deck.Runs;

/// <summary>A step that will want the hands soon.</summary>
internal sealed record Warning(string StepId, double InS);

/// <summary>Rings once when the hands become wanted while nobody touches the keys, and once some minutes before a step that has run by itself.</summary>
internal sealed class HandsBell
{
    private const double WarnS = 120;

    /// <summary>What has run for less than this needs no warning: the brewer has not gone far.</summary>
    private const double LongS = 300;

    private string _wanted = "";
    private string _warnedOf = "";
    private Warning? _warning;
    private bool _due;

    /// <param name="rings">False after a key: the brewer stands there already.</param>
    public void Listen(BrewDay? day, DateTimeOffset now, bool rings)
    {
        var focus = day is null || day.Over ? null : day.Focus(now);
        var wanted = focus is null ? "" : Wanted(focus, day!.Ms(now));
        _due |= rings && wanted.Length > 0 && wanted != _wanted;
        _wanted = wanted;
        if (focus is not null && rings)
            Warn(day!, focus, now);
    }

    public bool Take()
    {
        var due = _due;
        _due = false;
        return due;
    }

    /// <summary>Given once.</summary>
    public Warning? TakeWarning()
    {
        var warning = _warning;
        _warning = null;
        return warning;
    }

    private void Warn(BrewDay day, RunFocus focus, DateTimeOffset now)
    {
        var left = (focus.DueMs - day.Ms(now)) / 1000.0;
        if (focus.Act != FocusAct.Wait || left > WarnS || left <= 0 || _warnedOf == focus.StepId)
            return;
        _warnedOf = focus.StepId;
        if (day.State.Step(focus.StepId)?.StartedMs is not { } since || day.Ms(now) - since < LongS * 1000)
            return;
        _due = true;
        _warning = new Warning(Next(day, focus, now), left);
    }

    /// <summary>What the hands will do when the running step is over.</summary>
    private static string Next(BrewDay day, RunFocus focus, DateTimeOffset now) =>
        day.Forecast(now).Rest.FirstOrDefault(s => day.State.Step(s.Spec.Id)?.Status == RunStatus.Idle && s.HandsS > 0
            && day.State.MsAt(s.StartS, day.Ms(now)) >= focus.DueMs - 1000)?.Spec.Id ?? focus.StepId;

    private static string Wanted(RunFocus focus, long nowMs) => focus.Act switch
    {
        FocusAct.Finish => focus.StepId,
        FocusAct.Start when focus.DueMs <= nowMs => focus.StepId,
        _ => "",
    };
}
