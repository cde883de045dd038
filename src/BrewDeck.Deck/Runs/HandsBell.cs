using System.Collections.Immutable;
using BrewDeck.Core.Running;

namespace BrewDeck.Deck.Runs;

/// <summary>What will want the hands soon, or does now: a step, or heat that is to be switched.</summary>
/// <param name="InS">Below 0: it was due so long ago, while the program slept or leapt.</param>
internal sealed record Warning(string StepId, double InS, HeatSwitch? Switch = null);

/// <summary>Rings once when the hands become wanted while nobody touches the keys, and once some minutes before a step that has run by itself.</summary>
internal sealed class HandsBell
{
    private const double WarnS = 120;

    /// <summary>What has run for less than this needs no warning: the brewer has not gone far.</summary>
    private const double LongS = 300;

    /// <summary>A level may be reached so much before it was foreseen.</summary>
    private const double LookS = 60;

    private string _wanted = "";
    private string _warnedOf = "";
    private Warning? _warning;
    private bool _due;
    private ImmutableArray<HeatSwitch> _switches = [];
    private readonly HashSet<string> _warnedOfHeat = [];

    /// <param name="rings">False after a key: the brewer stands there already.</param>
    public void Listen(BrewDay? day, DateTimeOffset now, bool rings)
    {
        var focus = day is null || day.Over ? null : day.Focus(now);
        var wanted = focus is null ? "" : Wanted(focus, day!.Ms(now));
        _due |= rings && wanted.Length > 0 && wanted != _wanted;
        _wanted = wanted;
        if (focus is not null && rings)
            Warn(day!, focus, now);
        var nowS = day is null ? 0 : day.State.SecondsAt(day.Ms(now));
        if (rings)
            Switch(focus is null ? [] : [.. day!.Forecast(now).Switches.Where(s => s.AtS > nowS)], nowS);
    }

    /// <summary>Heat is switched while a step runs on by itself: told some minutes before, and again at the level.</summary>
    private void Switch(ImmutableArray<HeatSwitch> ahead, double nowS)
    {
        if (_switches.FirstOrDefault(s => s.AtS <= nowS + LookS && !ahead.Any(a => a.Vessel == s.Vessel)) is { } now)
            Ring(now, now.AtS < nowS - LookS ? now.AtS - nowS : 0);
        else if (ahead.FirstOrDefault(s => s.AtS - nowS <= WarnS && !_warnedOfHeat.Contains(s.Vessel)) is { } soon)
            Ring(soon, soon.AtS - nowS);
        _switches = ahead;
        if (ahead.IsEmpty)
            _warnedOfHeat.Clear();
    }

    private void Ring(HeatSwitch which, double inS)
    {
        _warnedOfHeat.Add(which.Vessel);
        (_due, _warning) = (true, new Warning("", inS, which));
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
