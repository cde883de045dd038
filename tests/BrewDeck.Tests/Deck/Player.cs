using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Tests.Deck;

/// <summary>Somebody at the keys, with a clock that only moves when told to. Between two keys two seconds pass.</summary>
internal sealed class Player
{
    public static readonly DateTimeOffset Morning = DateTimeOffset.FromUnixTimeMilliseconds(Quayside.StartMs);

    public Player(MemoryStore? store = null, IRehearsalControls? rehearsal = null, DateTimeOffset? at = null, Tongue? tongue = null, SessionPorts? ports = null, params ReadOnlySpan<ReadingKind> byRule)
    {
        Store = store ?? new MemoryStore();
        Now = at ?? Morning;
        Session = new Session(
            ports ?? new SessionPorts(Store, new TwoHouses(), rehearsal),
            new SessionSettings { ProgramVersion = "test", Tongue = tongue ?? Tongue.English, TakenByRule = [.. byRule] },
            Now);
    }

    public MemoryStore Store { get; }

    public Session Session { get; }

    public DateTimeOffset Now { get; set; }

    /// <summary>Told each screen.</summary>
    public Action<Screen>? Shown { get; init; }

    public Screen Screen => Session.Screen;

    public DeckScreen Deck => Assert.IsType<DeckScreen>(Screen);

    public string Text => ScreenDump.Of(Screen);

    public string Notice => Screen.Notice?.ToString() ?? "";

    public string? Question => Screen.Overlay?.Question;

    public Player Key(KeyName name) => Strike(new KeyStroke(name));

    public Player Keys(string letters)
    {
        foreach (var letter in letters)
            Strike(letter == ' ' ? new KeyStroke(KeyName.Space) : KeyStroke.Of(letter));
        return this;
    }

    public Player Space() => Key(KeyName.Space);

    public Player Enter() => Key(KeyName.Enter);

    public Player Escape() => Key(KeyName.Escape);

    public Player Down(int times = 1)
    {
        for (var i = 0; i < times; i++)
            Key(KeyName.Down);
        return this;
    }

    /// <summary>Takes the row of the open question that begins so.</summary>
    public Player Choose(string row)
    {
        var rows = Assert.IsType<ChoiceOverlay>(Screen.Overlay).Options.Select(o => o.Cells[0]).ToList();
        return Down(rows.FindIndex(r => r.StartsWith(row, StringComparison.Ordinal))).Enter();
    }

    /// <summary>Types a line and ends it with Enter; the first digit may have opened it.</summary>
    public Player Line(string text)
    {
        Send(new Input.Typed(text));
        Now = Now.AddSeconds(1);
        Send(new Input.Submitted(text));
        return this;
    }

    public Player Wait(double seconds)
    {
        Now = Now.AddSeconds(seconds);
        Send(new Input.Tick());
        return this;
    }

    public Player Strike(KeyStroke stroke, double afterS = 2)
    {
        Now = Now.AddSeconds(afterS);
        Send(new Input.Key(stroke));
        return this;
    }

    public Player Send(Input input)
    {
        Session.Receive(input, Now);
        Shown?.Invoke(Screen);
        return this;
    }

    /// <summary>From the opening screen to the deck of a new batch.</summary>
    public Player Begin()
    {
        Enter().Enter().Enter().Enter().Space();
        Assert.IsType<DeckScreen>(Screen);
        return this;
    }

    /// <summary>Does what is due, or waits until it is.</summary>
    public Player GoOn()
    {
        var focus = Session.Focus!;
        var due = DateTimeOffset.FromUnixTimeMilliseconds(focus.Act == FocusAct.Finish ? EndMs(focus.StepId) : focus.DueMs);
        if (due > Now)
        {
            Now = due;
            Send(new Input.Tick());
        }
        if (Session.Focus!.Act == FocusAct.Wait)
            return this;
        Space();
        // the deck asks once for a reading that nothing else would give
        return Screen.Overlay is ChoiceOverlay { Options: [_, { Cells: ["Read it now"] }] } ? Enter() : this;
    }

    public Player RunUntil(Func<RunState, bool> reached)
    {
        for (var i = 0; i < 500 && !reached(Session.State!); i++)
            GoOn();
        Assert.True(reached(Session.State!), Text);
        return this;
    }

    public Player Until(string stepId, RunStatus status = RunStatus.Running) => RunUntil(s => s.Step(stepId)?.Status == status);

    private long EndMs(string stepId)
    {
        var step = Session.Forecast!.Rest.FirstOrDefault(s => s.Spec.Id == stepId);
        return Session.State!.MsAt(step?.EndS ?? 0, Now.ToUnixTimeMilliseconds());
    }
}
