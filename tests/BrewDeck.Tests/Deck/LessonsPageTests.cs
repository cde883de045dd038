using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Learning;
using BrewDeck.Core.Recipes;
using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Deck.Screens;
using BrewDeck.Tests.Learning;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Deck;

public sealed class LessonsPageTests
{
    private readonly MemoryStore _store = new();
    private readonly OneHouse _house = new();
    private DateTimeOffset _now = new(2026, 6, 1, 9, 0, 0, TimeSpan.Zero);

    [Fact]
    public void Without_batches_every_lesson_says_too_few_data()
    {
        var session = Opened();
        Assert.All(Rows(session), r => Assert.Contains("too few data", r, StringComparison.Ordinal));
        session.Receive(new Input.Key(KeyStroke.Of('a')), Later());
        Assert.Contains("Nothing to accept", session.Screen.Notice!.ToString(), StringComparison.Ordinal);
        Assert.Empty(_house.Accepted);
    }

    [Fact]
    public void One_lesson_is_accepted_by_its_key_and_the_rest_stays()
    {
        var simulated = new SimulatedHouse(3, calibrated: false);
        foreach (var day in Enumerable.Range(1, 5))
            Keep(simulated.Events(day), rehearsed: false);
        var session = Opened();
        var at = Array.FindIndex(Rows(session), r => r.EndsWith("change", StringComparison.Ordinal));
        Assert.True(at >= 0, string.Join("\n", Rows(session)));
        for (var i = 0; i < at; i++)
            session.Receive(new Input.Key(new KeyStroke(KeyName.Down)), Later());
        Assert.Contains(((ListScreen)session.Screen).Details, d => d.ToString().StartsWith("80 % band", StringComparison.Ordinal));

        session.Receive(new Input.Key(KeyStroke.Of('a')), Later());
        var ask = Assert.IsType<ChoiceOverlay>(session.Screen.Overlay);
        Assert.DoesNotContain(ask.Lines, l => l.ToString().Contains("ehearsed", StringComparison.Ordinal));
        Assert.Equal(0, ask.Selected);
        session.Receive(new Input.Key(new KeyStroke(KeyName.Down)), Later());
        session.Receive(new Input.Key(new KeyStroke(KeyName.Enter)), Later());

        var accepted = Assert.Single(_house.Accepted);
        Assert.Equal(accepted.Proposed, accepted.Parameter.Get(_house.House), 1e-9);
        Assert.DoesNotContain("change", Rows(session)[at], StringComparison.Ordinal);
    }

    [Fact]
    public void Rehearsed_batches_are_kept_apart_until_asked_for()
    {
        Keep(new SimulatedHouse(3, calibrated: false).Events(1), rehearsed: true);
        var session = Opened();
        Assert.StartsWith("0 batches", session.Screen.Corner, StringComparison.Ordinal);
        session.Receive(new Input.Key(KeyStroke.Of('r')), Later());
        Assert.StartsWith("1 batch", session.Screen.Corner, StringComparison.Ordinal);
    }

    [Fact]
    public void What_rests_on_rehearsed_batches_says_so_before_it_is_accepted()
    {
        var simulated = new SimulatedHouse(3, calibrated: false);
        foreach (var day in Enumerable.Range(1, 5))
            Keep(simulated.Events(day), rehearsed: day > 1);
        var session = Opened();
        session.Receive(new Input.Key(KeyStroke.Of('r')), Later());
        var at = Array.FindIndex(Rows(session), r => r.EndsWith("change", StringComparison.Ordinal));
        for (var i = 0; i < at; i++)
            session.Receive(new Input.Key(new KeyStroke(KeyName.Down)), Later());
        session.Receive(new Input.Key(KeyStroke.Of('a')), Later());
        var ask = Assert.IsType<ChoiceOverlay>(session.Screen.Overlay);
        Assert.StartsWith("Rehearsed: 4 of its 5 batches.", ask.Lines[0].ToString(), StringComparison.Ordinal);
        session.Receive(new Input.Key(new KeyStroke(KeyName.Down)), Later());
        session.Receive(new Input.Key(new KeyStroke(KeyName.Enter)), Later());
        Assert.Equal(4, Assert.Single(_house.Accepted).Rehearsed);
    }

    private Session Opened()
    {
        var session = new Session(new SessionPorts(_store, _house, Keeper: _house), new SessionSettings(), _now);
        while (!Rows(session)[((ListScreen)session.Screen).Selected].StartsWith("Lessons", StringComparison.Ordinal))
            session.Receive(new Input.Key(new KeyStroke(KeyName.Down)), Later());
        session.Receive(new Input.Key(new KeyStroke(KeyName.Enter)), Later());
        Assert.StartsWith("Lessons: Quayside", session.Screen.Title, StringComparison.Ordinal);
        return session;
    }

    private void Keep(IReadOnlyList<RunEvent> events, bool rehearsed)
    {
        var batch = _store.Open((BatchOpened)events[0] with { Rehearsed = rehearsed });
        foreach (var happened in events.Skip(1))
            _store.Append(batch, happened);
    }

    private static string[] Rows(Session session) => [.. ((ListScreen)session.Screen).Rows.Select(r => string.Join(" ", r.Cells))];

    private DateTimeOffset Later() => _now = _now.AddSeconds(5);

    /// <summary>One brewhouse that takes what is accepted.</summary>
    private sealed class OneHouse : IProfiles, IProfileKeeper
    {
        public Brewhouse House { get; private set; } = Demo.House;

        public List<Lesson> Accepted { get; } = [];

        public IReadOnlyList<ProfileEntry> Brewhouses() => [new("Quayside 65", "quay.toml")];

        public IReadOnlyList<ProfileEntry> Recipes() => [];

        public Brewhouse Brewhouse(ProfileEntry entry) => House;

        public Recipe Recipe(ProfileEntry entry) => throw new ProfileException("none");

        public GristLine? GristOnHand(string name) => null;

        public BrewDeck.Core.Planning.HopOnHand? HopOnHand(string name) => null;

        public ProfileEntry Accept(ProfileEntry entry, Lesson lesson, DateTimeOffset now)
        {
            Accepted.Add(lesson);
            House = lesson.AppliedTo(House);
            return entry;
        }
    }
}
