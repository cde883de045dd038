using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Core.Waters;
using BrewDeck.Deck;
using BrewDeck.Deck.Plain;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Deck.Tongues;

/// <summary>
/// Whatever stands on a screen is a message of the catalogues, a number with its unit, or what the brewer named so: each word that is
/// found is put through <c>Text</c>, or named here. The whole of it takes over ten seconds and runs on demand.
/// </summary>
public sealed class NoEnglishTests
{
    private static readonly Tongue Marked = MarkedTongue.Of(SourceTexts.Deck.Said.Select(t => t.Text), UsualNames());

    /// <summary>Units, keys and names that are the same in each language, and what this test types.</summary>
    private static readonly ImmutableHashSet<string> Anywhere =
    [
        "BrewDeck", "IBU", "EBC", "SRM", "kW", "kg", "mL", "mg", "Ca", "Mg", "Na", "Cl", "SO", "CaCO", "pH", "SG", "mm", "kJ", "min", "Tinseth", "Rager", "bx",
        "space", "enter", "esc", "tab", "up", "down", "left", "right", "page", "home", "end", "backspace", "go", "on",
    ];

    /// <summary>Words that came from elsewhere, each with the line where it was first seen.</summary>
    private readonly SortedDictionary<string, string> _left = new(StringComparer.Ordinal);
    private readonly HashSet<string> _named = new(Anywhere.Concat(Words(string.Join(' ', Names()))), StringComparer.OrdinalIgnoreCase);
    private Screen? _last;

    /// <summary>The share of it that each run has time for: to the deck, its keys, a recipe, and the questions of a set-up.</summary>
    [Fact]
    public void To_the_deck_and_a_little_beside_it()
    {
        var store = new MemoryStore();
        var player = new Player(store, tongue: Marked, ports: new(store, new TwoHouses(), Writer: new Drafts())) { Shown = Look };
        player.Key(KeyName.Home).Down(3).Enter().Enter().Keys("e");
        EachRow(player);
        SetUp(player, 4);
        Home(player);
        player.Key(KeyName.Home);
        Choose(player);
        EachKey(player);

        None();
    }

    [Fact(Explicit = true)]
    public void From_the_opening_page_to_pitched_wort()
    {
        var player = new Player(tongue: Marked) { Shown = Look };
        Choose(player);
        player.Until("mash.dough-in");
        EachKey(player);
        player.Line("64.0").Space();
        player.Keys("r").Enter();
        player.RunUntil(s => s.Steps.Any(x => x.Spec.Kind == StepKind.Vorlauf && x.Status == RunStatus.Running));
        EachKey(player);
        player.Line("99").Enter().Keys("u");
        player.RunUntil(s => s.Steps.Any(x => x.Spec.Kind == StepKind.Boil && x.Status == RunStatus.Running));
        EachKey(player);
        player.Wait(7200).Keys("al").Enter().Down().Enter().Escape();
        player.RunUntil(s => s.Status == RunStatus.Complete);
        EachKey(player);

        None();
    }

    [Fact(Explicit = true)]
    public void What_shows_itself_in_a_rehearsal()
    {
        foreach (var kind in Enum.GetValues<MishapKind>())
        {
            var player = new Player(rehearsal: new Showing(new(kind, kind == MishapKind.TrippedCircuit ? "A" : "kettle", [.. Enum.GetValues<HandAct>()])), tongue: Marked) { Shown = Look };
            player.Begin();
            player.Keys("m").Escape();
            foreach (var key in "+-.o")
                player.Keys(key.ToString());
        }

        None();
    }

    /// <summary>The pages before and after the day; each row of them that asks something refuses nonsense.</summary>
    [Fact(Explicit = true)]
    public void Beside_the_day()
    {
        var store = new MemoryStore();
        var player = new Player(store, tongue: Marked, ports: new(store, new TwoHouses(), Writer: new Drafts()) { Exercises = new NonePassed() }) { Shown = Look };
        Exercises(player);
        Recipes(player);
        SetUp(player, 5);
        Reckoner(player);
        Open(player, 0);
        player.Enter().Enter().Enter().Space().RunUntil(s => s.Status == RunStatus.Complete).Space().Keys("f");
        EachRow(player);
        Open(player, 2);
        player.Keys("mcorrreehh").Keys("s").Line("nonsense").Keys("t");
        Open(player, 3);
        player.Enter().Keys("a");
        Open(player, 7);

        None();
    }

    private static void Exercises(Player player)
    {
        Open(player, 1);
        player.Down(6);
    }

    private static void Recipes(Player player)
    {
        Open(player, 4);
        player.Keys("e");
        EachRow(player);
        Home(player);
        Open(player, 4);
        player.Keys("b");
        EachRow(player);
        player.Space();
    }

    private static void SetUp(Player player, int row)
    {
        Open(player, row);
        for (var i = 0; i < 60 && player.Screen is ListScreen { Overlay: null } page && !page.Title.Contains(':', StringComparison.Ordinal); i++)
        {
            if (page.Rows.Length is 2 or 3)
                player.Down().Enter();
            if (player.Screen.Overlay is EntryOverlay)
                player.Line("nonsense").Escape().Key(KeyName.Home).Enter();
            else if (page.Rows.Length is not (2 or 3))
                player.Enter();
        }
    }

    private static void Reckoner(Player player)
    {
        Open(player, 6);
        for (var row = 0; row < 21 && player.Screen is ListScreen; row++)
        {
            player.Enter();
            EachRow(player);
            player.Escape().Down();
        }
    }

    /// <summary>Goes down a page and takes each row; what is asked gets nonsense.</summary>
    private static void EachRow(Player player)
    {
        var title = player.Screen.Title;
        for (var row = 0; player.Screen is ListScreen list && row < list.Rows.Length; row++)
        {
            player.Key(KeyName.Home).Down(row).Enter();
            for (var option = (player.Screen.Overlay as ChoiceOverlay)?.Options.Length - 1 ?? 0; option >= 0; option--)
            {
                if (player.Screen.Overlay is null)
                    player.Key(KeyName.Home).Down(row).Enter();
                if (player.Screen.Overlay is ChoiceOverlay)
                    player.Key(KeyName.Home).Down(option).Enter();
                if (player.Screen.Overlay is EntryOverlay)
                    player.Line("nonsense");
                for (var i = 0; i < 4 && (player.Screen.Overlay is not null || !player.Screen.Title.StartsWith(title, StringComparison.Ordinal)); i++)
                    player.Escape();
            }
        }
    }

    private static void Open(Player player, int row)
    {
        Home(player);
        player.Key(KeyName.Home).Down(row).Enter();
    }

    private static void Home(Player player)
    {
        for (var i = 0; i < 9 && player.Screen.Title != "BrewDeck"; i++)
        {
            player.Escape();
            // a recipe that was changed is left as it was
            if (player.Screen.Overlay is ChoiceOverlay)
                player.Down(2).Enter();
        }
        Assert.Equal("BrewDeck", player.Screen.Title);
    }

    /// <summary>Each choice of the day is asked for and refuses nonsense.</summary>
    private static void Choose(Player player)
    {
        player.Keys("?").Escape();
        player.Enter().Enter().Enter();
        Assert.IsType<ListScreen>(player.Screen);
        var day = player.Screen.Title;
        for (var row = 1; row < ((ListScreen)player.Screen).Rows.Length; row++)
        {
            player.Down().Enter();
            if (player.Question is not null)
                player.Line("nonsense 7").Escape();
            else if (player.Screen.Title != day)
                Water(player);
        }
        player.Keys(" ").Keys("c").Keys(" ").Keys(" ");
        Assert.IsType<DeckScreen>(player.Screen);
    }

    /// <summary>Each line of an analysis refuses nonsense, or turns to its next word; then it is left as it was.</summary>
    private static void Water(Player player)
    {
        for (var row = 0; row < ((ListScreen)player.Screen).Rows.Length; row++)
        {
            player.Enter();
            if (player.Question is not null)
                player.Line("nonsense 7").Escape();
            player.Down();
        }
        player.Escape();
        Assert.IsType<ChoiceOverlay>(player.Screen.Overlay);
        player.Down(2).Enter();
    }

    /// <summary>Each key of the deck that leads to a page or to a question, and what that does with nonsense.</summary>
    private static void EachKey(Player player)
    {
        foreach (var key in "?plcthfbnsxrawh")
        {
            var batch = player.Session.State!.Status;
            player.Keys(key.ToString());
            if (key == 'c')
                player.Key(KeyName.Right).Key(KeyName.Right);
            if (player.Screen.Overlay is EntryOverlay)
                player.Line("nonsense");
            if (key == 't' && player.Screen.Overlay is ChoiceOverlay)
                player.Enter().Line("nonsense");
            if (key == 'b' && player.Screen.Overlay is ChoiceOverlay)
                player.Enter().Enter().Line("nonsense");
            if (key == 'w')
                player.Keys(Marked.Find("dry")!);
            if (key == 'h')
                player.Keys("h");
            for (var i = 0; i < 4 && player.Screen.Overlay is not null; i++)
                player.Escape();
            while (player.Screen is not DeckScreen)
                player.Escape();
            Assert.Equal(batch, player.Session.State.Status);
        }
    }

    private void None() => Assert.True(_left.Count == 0, string.Join("\n", _left.Select(w => $"{w.Key}: {w.Value}")));

    private void Look(Screen screen)
    {
        // a countdown's second changes nothing of the words
        if (screen == _last)
            return;
        _last = screen;
        var notation = Notation.Metric with { Tongue = Marked };
        var deck = screen as DeckScreen;
        IEnumerable<string> all =
        [
            .. PlainSpeech.Whole(screen, notation), screen.Notice?.ToString() ?? "", .. screen.Keys.Select(k => k.Does), screen.Corner,
            .. deck?.Log.Select(l => l.ToString()) ?? [], .. deck?.Strip.Select(p => p.Label) ?? [], .. deck?.Circuits.Select(c => $"{c.Name} {c.Text}") ?? [],
        ];
        if (screen is ListScreen list)
            all = all.Concat(list.Columns.Select(c => c.Header));
        foreach (var line in all)
        {
            foreach (var word in Words(line).Where(w => !_named.Contains(w)))
                _left.TryAdd(word, line);
        }
    }

    private static IEnumerable<string> Words(string text) =>
        string.Concat(text.Select(c => char.IsAsciiLetter(c) ? c : ' ')).Split(' ', StringSplitOptions.RemoveEmptyEntries).Where(w => w.Length > 1);

    /// <summary>Usual things have a name in each language: those of the first one.</summary>
    private static IEnumerable<string> UsualNames() =>
        Tongue.Of("de")!.Messages.Keys.Where(k => k.StartsWith("name" + Catalogue.ContextMark, StringComparison.Ordinal)).Select(k => k[("name" + Catalogue.ContextMark).Length..]);

    /// <summary>What the brewer named.</summary>
    private static IEnumerable<string> Names() =>
    [
        Demo.House.Name, Demo.House.Fermenter.Name, .. Demo.House.Vessels.SelectMany(v => new[] { v.Id, v.Name }), .. Demo.House.Pumps.Select(p => p.Id),
        Demo.Amber.Name, Demo.Amber.Style, Demo.Amber.Notes, Demo.Amber.Yeast.Name, .. Demo.Amber.Grist.Select(g => g.Name),
        .. Demo.Amber.Hops.Select(h => h.Name), .. Demo.Amber.Others.Select(o => o.Name), .. Demo.Amber.Rests.Select(r => r.Name), "nonsense Too much Broken fermenter Garage", "broken.toml:3: unknown key 'vesel', did you mean 'vessel'?",
    ];

    private sealed class Showing(Sign sign) : IRehearsalControls
    {
        public double Speed { get; set; } = 1;

        public bool Paused { get; set; }

        public bool HandsOn { get; set; } = true;

        public IReadOnlyList<Sign> Signs => [sign];

        public IReadOnlyList<Dial> Dials => [new("kettle", 20, 10)];
    }

    private sealed class Drafts : IProfileWriter
    {
        public ProfileEntry Write(Brewhouse brewhouse, IReadOnlyDictionary<string, string> notes, DateTimeOffset now) => new(brewhouse.Name, "nonsense");

        public ProfileEntry Write(Recipe recipe, ProfileEntry? entry, DateTimeOffset now) => new(recipe.Name, "nonsense");

        public ProfileEntry Write(WaterSupply water, ProfileEntry? entry, DateTimeOffset now) => new(water.Source.Name, "nonsense");

        public IReadOnlyList<string> Draft(string name) => [];

        public void KeepDraft(string name, IReadOnlyList<string> lines)
        {
        }
    }

    private sealed class NonePassed : IExerciseBook
    {
        public bool HasPassed(int number) => number == 1;

        public void Keep(int number, int batch, bool passed, DateTimeOffset now)
        {
        }
    }
}
