using System.Globalization;
using BrewDeck.Commands;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Logbook;
using BrewDeck.Profiles;
using BrewDeck.Rehearsals;
using BrewDeck.Simulator.Rehearsing;
using BrewDeck.SystemTests.Crash;

namespace BrewDeck.SystemTests.Host;

/// <summary>
/// Rehearsed days one after the other through the real session and the real journal on disk, until somebody kills the process. Each event
/// is said on the standard output once the journal has taken it, and each screen once it could be seen:
/// <c>event BATCH INDEX HASH</c> and <c>screen BATCH EVENTS MS HASH</c>.
/// </summary>
internal sealed class KillableDays(string folder, TextWriter output)
{
    private static readonly DateTimeOffset Start = new(2026, 5, 30, 7, 0, 0, TimeSpan.Zero);

    private const long LongestDayMs = 24 * 3_600_000;

    public void Run()
    {
        using var journal = Journal.Open(new FolderDisk(folder), Workplace.StatusOf);
        var profiles = ProfileFolder.BesideProgram(folder);
        while (true)
            Day(new SayingStore(journal, output), profiles);
    }

    /// <summary>The day that was broken off, or the next one.</summary>
    private void Day(SayingStore saying, ProfileFolder profiles)
    {
        var store = new WatchedStore(saying);
        var head = store.List().FirstOrDefault(h => h.Status is not (RunStatus.Complete or RunStatus.Aborted));
        var events = head is null ? [] : store.Read(head.Number);
        var seed = head?.Number ?? store.List().Count + 1; // a day's seed is its number
        var begins = events.Count > 0 ? DateTimeOffset.FromUnixTimeMilliseconds(events[^1].AtMs) : Start;
        var session = SessionScreens.New(store, profiles, begins, seed);
        if (head is null && !session.Begin(Draw(profiles), begins))
            throw new InvalidOperationException("the day cannot be begun");
        var plan = session.State!.Plan!;
        var player = RehearsalPlayer.For(plan, seed, events.Count > 0 ? events[0].AtMs : begins.ToUnixTimeMilliseconds());
        if (events.Count > 0)
            player.Replay(events);
        else
            player.Happened(store.Take(), session.State);
        Play(session, store, saying, player);
    }

    private void Play(Session session, WatchedStore store, SayingStore saying, RehearsalPlayer player)
    {
        while (session.State!.Status is not (RunStatus.Complete or RunStatus.Aborted))
        {
            if (player.Next(session.State, player.NowMs + 600_000) is not { } command)
            {
                if (player.NowMs > player.StartMs + LongestDayMs)
                    throw new InvalidOperationException("the day does not end");
                continue;
            }

            var now = DateTimeOffset.FromUnixTimeMilliseconds(player.NowMs);
            player.Answered(command, session.Act(command, now));
            player.Happened(store.Take(), session.State);
            if (session.State.Status is not (RunStatus.Complete or RunStatus.Aborted))
                Say($"screen {saying.Batch} {saying.Events} {player.NowMs} {SessionScreens.HashOf(SessionScreens.At(session, now))}");
        }
    }

    private void Say(FormattableString line)
    {
        output.WriteLine(line.ToString(CultureInfo.InvariantCulture));
        output.Flush();
    }

    private static Plan Draw(ProfileFolder profiles) => ((PlanResult.Drawn)new DayOptions().Draw(profiles)).Plan;

    /// <summary>Says what the journal has acknowledged, and only then.</summary>
    private sealed class SayingStore(IBatchStore journal, TextWriter output) : IBatchStore
    {
        public int Batch { get; private set; }

        public int Events { get; private set; }

        public IReadOnlyList<string> Notices => journal.Notices;

        public IReadOnlyList<BatchHead> List() => journal.List();

        public IReadOnlyList<RunEvent> Read(int batch)
        {
            var events = journal.Read(batch);
            (Batch, Events) = (batch, events.Count);
            return events;
        }

        public int Open(BatchOpened opened)
        {
            (Batch, Events) = (journal.Open(opened), 0);
            Acknowledge(opened);
            return Batch;
        }

        public void Append(int batch, RunEvent happened)
        {
            journal.Append(batch, happened);
            Acknowledge(happened);
        }

        private void Acknowledge(RunEvent happened)
        {
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"event {Batch} {Events++} {SessionScreens.HashOf(happened)}"));
            output.Flush();
        }
    }
}
