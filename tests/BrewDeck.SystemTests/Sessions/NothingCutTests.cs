using System.Text.RegularExpressions;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;
using BrewDeck.Terminal.Compose;

namespace BrewDeck.SystemTests.Sessions;

/// <summary>At 80x24 nothing that a brewer must act on is cut: a rehearsed day with a mishap, each screen looked at.</summary>
public sealed partial class NothingCutTests
{
    private const int Columns = 78, NoticeRows = 2;

    [Fact]
    public void No_sentence_of_a_rehearsed_day_is_cut()
    {
        using var at = new AtTheRehearsal(new Mishap(MishapKind.WrongWeighIn, Severity.Severe));
        var cut = new SortedSet<string>(StringComparer.Ordinal);
        var seen = 0;
        at.Until(() =>
        {
            seen++;
            cut.UnionWith(Cut(at));
            return at.State.Status == RunStatus.Complete;
        });
        Assert.True(seen > 50, $"{seen} screens");
        Assert.True(cut.Count == 0, string.Join('\n', cut));
    }

    /// <summary>Gallons are longer words than litres; what the hands do in the longest flow of the day stands on the deck all the same.</summary>
    [Theory]
    [InlineData(UnitSystem.Metric)]
    [InlineData(UnitSystem.Us)]
    public void The_orders_of_a_run_off_are_whole_before_in_and_on_hold(UnitSystem units)
    {
        using var at = new AtTheRehearsal(units);
        at.Until(() => at.Deck.Headline.ToString().StartsWith("Lauter", StringComparison.Ordinal));
        Assert.DoesNotContain("p shows all", at.Text, StringComparison.Ordinal);
        Assert.Contains("Valves shut", at.Text, StringComparison.Ordinal);
        at.Until(StepKind.Lauter, RunStatus.Running);
        Assert.DoesNotContain("p shows all", at.Text, StringComparison.Ordinal);
        Assert.Contains("Expected: volume", at.Text, StringComparison.Ordinal);
        at.Strike("h");
        Assert.StartsWith("HELD", at.Deck.Headline.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("p shows all", at.Text, StringComparison.Ordinal);
    }

    [GeneratedRegex("^ *… [0-9]+ more *$")]
    private static partial Regex Counted();

    private static IEnumerable<string> Cut(AtTheRehearsal at)
    {
        var rows = EdgeLines.Notice(at.Screen, Columns, NoticeRows);
        if (rows is [.., var last] && last.ToString().EndsWith(Lines.Cut, StringComparison.Ordinal))
            yield return $"notice: {at.Screen.Notice}";
        // figures of the outlook that have no room are counted, no sentence among them; the name in the corner is cut so that the clock stays;
        // what undo takes back is told short, and in full by the log; "p shows all" says where the rest is
        foreach (var line in at.Text.Split('\n').Skip(1).Where(l => l.Contains(Lines.Cut, StringComparison.Ordinal) && !l.Contains(" undo ", StringComparison.Ordinal) && !l.Contains("p shows all", StringComparison.Ordinal) && !Counted().IsMatch(l)))
            yield return $"{(at.Screen as DeckScreen)?.Headline}: {line.Trim()}";
    }
}
