using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Alarms;
using BrewDeck.Deck.Screens;
using static BrewDeck.SystemTests.Sessions.AtTheKeys;

namespace BrewDeck.SystemTests.Sessions;

/// <summary>Alarms as the brewer meets them: said, repeated, heard, shelved, over, and in the record.</summary>
public sealed class AlarmTests : IDisposable
{
    private readonly AtTheKeys _at = new();
    private readonly BrewerByKeys _brewer;

    public AlarmTests()
    {
        _brewer = new BrewerByKeys(_at, Space, BrewerByKeys.Decimal);
        _brewer.Begin(ImportedRecipe.Name, _at.DownTo, () => _at.Strike(Space, null), Space);
    }

    public void Dispose() => _at.Dispose();

    [Fact]
    public void An_addition_that_waits_is_said_repeated_heard_and_over_when_it_is_in()
    {
        WaitAtTheSecondAddition();
        _at.Wait(TimeSpan.FromSeconds(61));

        var deck = Assert.IsType<DeckScreen>(_at.Session.Screen);
        Assert.StartsWith("!! SOON An addition waits: Add ", Assert.Single(deck.Alarms).ToString(), StringComparison.Ordinal);
        Assert.EndsWith("Bitterness and aroma drift with each minute. Add it, then space.", deck.Alarms[0].ToString(), StringComparison.Ordinal);
        Assert.Contains("a heard", _at.Text, StringComparison.Ordinal);
        Assert.StartsWith("!! An addition waits", _at.Session.Title, StringComparison.Ordinal);
        Assert.Equal(2, Rings(60));

        _at.Strike("a");
        Assert.Equal(0, Rings(120));
        Assert.StartsWith("heard SOON", Assert.IsType<DeckScreen>(_at.Session.Screen).Alarms[0].ToString(), StringComparison.Ordinal);

        _at.Strike(Space);
        Assert.Empty(Assert.IsType<DeckScreen>(_at.Session.Screen).Alarms);
        Assert.Equal(["AlarmRaised", "AlarmAcknowledged", "AlarmCleared"], AlarmEvents().TakeLast(3));
    }

    [Fact]
    public void What_nobody_has_heard_flashes_less_than_twice_a_second()
    {
        WaitAtTheSecondAddition();
        _at.Wait(TimeSpan.FromMinutes(2));
        var tones = Enumerable.Range(0, 100).Select(_ =>
        {
            _at.Wait(TimeSpan.FromMilliseconds(50));
            return Assert.IsType<DeckScreen>(_at.Session.Screen).Alarms[0].Spans[0].Tone;
        }).ToList();

        Assert.InRange(tones.Zip(tones.Skip(1)).Count(pair => pair.First != pair.Second), 4, 2 * 2 * 5);
    }

    [Fact]
    public void A_shelved_alarm_is_out_of_sight_until_its_time_is_over()
    {
        WaitAtTheSecondAddition();
        _at.Wait(TimeSpan.FromMinutes(2));
        _at.Strike("l").Strike(Enter).Strike(Down).Strike(Enter).Strike("q");
        Assert.Empty(Assert.IsType<DeckScreen>(_at.Session.Screen).Alarms);

        _at.Wait(TimeSpan.FromMinutes(5));
        Assert.NotEmpty(Assert.IsType<DeckScreen>(_at.Session.Screen).Alarms);
        Assert.Contains(_at.Events, e => e is AlarmShelved { Alarm: AlarmKind.AdditionLate });
    }

    [Fact]
    public void Undo_takes_back_the_last_act_and_no_alarm()
    {
        WaitAtTheSecondAddition();
        _at.Wait(TimeSpan.FromMinutes(2));
        _at.Strike("a");
        _at.Strike("u");

        Assert.False(_at.Events[_at.Events.OfType<Undone>().Single().Seq] is AlarmRaised or AlarmAcknowledged);
    }

    [Fact]
    public void Hands_are_told_two_minutes_before_they_are_needed()
    {
        _brewer.Until(StepKind.Stand);
        var before = _at.Rings;
        _at.Wait(TimeSpan.FromMilliseconds(_at.Session.Focus!.DueMs - _at.Now.ToUnixTimeMilliseconds() - 100_000));

        Assert.Equal(1, _at.Rings - before);
        Assert.StartsWith("In 2 minutes: ", _at.Session.Screen.Notice!.ToString(), StringComparison.Ordinal);
    }

    private void WaitAtTheSecondAddition()
    {
        _brewer.Until(s => s.Steps.First(x => x.Spec.Kind == StepKind.AddToBoil).Status == RunStatus.Complete);
        while (true)
        {
            _at.WaitUntilDue();
            if (_at.Session.Focus is { Act: FocusAct.Start } focus && Kind(focus.StepId) == StepKind.AddToBoil)
                return;
            _brewer.GoOn();
        }
    }

    private StepKind? Kind(string id) => _at.Session.State!.Step(id)?.Spec.Kind;

    private IEnumerable<string> AlarmEvents() =>
        _at.Events.Where(e => e is AlarmRaised or AlarmCleared or AlarmAcknowledged or AlarmShelved).Select(e => e.GetType().Name);

    // the window takes the bell as soon as it rings
    private int Rings(int seconds)
    {
        var before = _at.Rings;
        for (var s = 0; s < seconds; s++)
            _at.Wait(TimeSpan.FromSeconds(1));
        return _at.Rings - before;
    }
}
