using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Logbook;
using BrewDeck.Rehearsals;
using BrewDeck.Simulator.Rehearsing;
using BrewDeck.Terminal.Paint;
using BrewDeck.Terminal.Stills;

namespace BrewDeck.Commands;

/// <summary><c>brewdeck screenshots</c>: pictures of real screens of one rehearsed day, the same on every machine.</summary>
internal static class Screenshots
{
    private static readonly DateTimeOffset Start = new(2026, 5, 30, 7, 0, 0, TimeSpan.Zero);

    /// <summary>Writes the pictures, or with <paramref name="check"/> says which are not as they would be written.</summary>
    public static int Run(Workplace place, string folder, bool check) => place.Guard(() =>
    {
        var stale = 0;
        foreach (var (name, still) in Day(place).Concat(MakingStills.Of(place, Start)))
        {
            stale += Keep(place, Path.Combine(folder, name + ".svg"), still.ToSvg(), check);
            stale += Keep(place, Path.Combine(folder, name + ".txt"), still.ToText(), check);
        }
        return stale == 0 ? ExitCode.Done : ExitCode.Refused;
    });

    private static int Keep(Workplace place, string path, string content, bool check)
    {
        if (!check)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, content);
            return 0;
        }
        if (File.Exists(path) && File.ReadAllText(path).ReplaceLineEndings("\n") == content.ReplaceLineEndings("\n"))
            return 0;
        return place.Say($"{path}: is not what the program shows now; run brewdeck screenshots {Path.GetDirectoryName(path)}", ExitCode.Refused);
    }

    private static IEnumerable<(string Name, StillScreen Still)> Day(Workplace place)
    {
        var profiles = place.Profiles();
        using var journal = Journal.Open(new MemoryDisk(), Workplace.StatusOf);
        var store = new WatchedStore(journal);
        var session = new Session(new SessionPorts(store, profiles), new SessionSettings { ProgramVersion = Workplace.Version }, Start);
        if (new DayOptions { Recipe = "harbour-lager" }.Draw(profiles) is not PlanResult.Drawn { Plan: var plan })
            yield break;
        session.Begin(plan, Start);
        var player = RehearsalPlayer.For(plan, 4, Start.ToUnixTimeMilliseconds());
        foreach (var scene in Scenes)
        {
            Play(session, player, store, scene.Until);
            foreach (var (columns, rows) in scene.Sizes)
                yield return ($"{scene.Name}-{columns}x{rows}", Still(session, columns, rows, At(player)));
            foreach (var theme in scene.Themes)
                yield return ($"{scene.Name}-{theme.ToString().ToLowerInvariant()}-120x40", Still(session, 120, 40, At(player), theme));
            Type(session, scene.Keys, At(player));
            yield return ($"{scene.KeysShow}-80x24", Still(session, 80, 24, At(player)));
            Type(session, scene.Back, At(player));
        }
    }

    private static readonly Scene[] Scenes =
    [
        new("weigh-in", s => Runs(s, StepKind.WeighIn), [(80, 24)], "run-sheet", [Key('p')], [Escape]),
        new("mash", s => Since(s, StepKind.Rest, 2) > 12 * 60, [(80, 24), (120, 40), (200, 60)], "reading", [Key('6')], [Escape]),
        new("off", s => true, [], "remedies", [Key('6'), new Input.Submitted("60.5"), Key('r')], [Escape, Key('u')]),
        new("lauter", s => Since(s, StepKind.Lauter, 1) > 15 * 60, [(100, 30)], "keys", [Key('?')], [Escape]),
        new("boil", s => Since(s, StepKind.Boil, 1) > 20 * 60, [(80, 24), (120, 40)], "troubles", [Key('f')], [Escape]) { Themes = [Theme.Light, Theme.Contrast] },
        new("cast-out", s => Runs(s, StepKind.CastOut), [(80, 24)], "charts", [Key('c')], [Escape]),
    ];

    /// <summary>A second between two keys: keys struck faster count as one.</summary>
    private static void Type(Session session, Input[] keys, DateTimeOffset from)
    {
        for (var i = 0; i < keys.Length; i++)
            session.Receive(keys[i], from.AddSeconds(i));
    }

    private static bool Runs(MomentOfDay day, StepKind kind) =>
        day.State.Steps.Any(s => s.Status == RunStatus.Running && s.Spec.Kind == kind);

    private static double Since(MomentOfDay day, StepKind kind, int nth) =>
        day.State.Steps.Where(s => s.Spec.Kind == kind).ElementAtOrDefault(nth - 1) is { StartedMs: { } ms } ? (day.NowMs - ms) / 1000.0 : 0;

    private static void Play(Session session, RehearsalPlayer player, WatchedStore store, Func<MomentOfDay, bool> reached)
    {
        const long pieceMs = 20_000;
        while (session.State is { Status: not (RunStatus.Complete or RunStatus.Aborted) } state && !reached(new(state, player.NowMs)))
        {
            var until = player.NowMs + pieceMs;
            while (player.Next(session.State!, until) is { } command)
            {
                player.Answered(command, session.Act(command, At(player)));
                player.Happened(store.Take(), session.State!);
            }
            session.Receive(new Input.Tick(), At(player));
        }
    }

    private static DateTimeOffset At(RehearsalPlayer player) => DateTimeOffset.FromUnixTimeMilliseconds(player.NowMs);

    private static StillScreen Still(Session session, int columns, int rows, DateTimeOffset now, Theme theme = Theme.Dark)
    {
        session.Receive(new Input.Resized(columns, rows), now);
        return StillScreen.Of(session.Screen, columns, rows, theme);
    }

    private sealed record MomentOfDay(RunState State, long NowMs);

    private sealed record Scene(
        string Name, Func<MomentOfDay, bool> Until, (int Columns, int Rows)[] Sizes, string KeysShow, Input[] Keys, Input[] Back)
    {
        /// <summary>Besides the dark one, at 120x40.</summary>
        public Theme[] Themes { get; init; } = [];
    }

    private static Input Key(char character) => new Input.Key(KeyStroke.Of(character));

    private static Input Escape => new Input.Key(new KeyStroke(KeyName.Escape));
}
