using BrewDeck.Core.Running;
using BrewDeck.Deck.Wording;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Deck;

public sealed class AbortWordsTests
{
    /// <summary>"given up: rehearsal_out_of_time" stood on a batch's page.</summary>
    [Fact]
    public void A_rehearsed_day_that_never_ended_is_told_in_words()
    {
        var aborted = new RunAborted(1, RunAborted.OutOfTime);
        var words = new EventWords(Demo.House, Notation.Metric, id => id).Of(aborted, [aborted]);
        Assert.Equal("aborted (the rehearsed day did not come to its end in time)", words);
        var state = new RunState { Status = RunStatus.Aborted, AbortReason = RunAborted.OutOfTime };
        Assert.Equal("given up: the rehearsed day did not come to its end in time", AbortWords.Line(state, Notation.Metric));
    }

    [Fact]
    public void The_brewers_own_words_stay_as_they_are()
    {
        Assert.Equal("given up: no_malt", AbortWords.Line(new RunState { Status = RunStatus.Aborted, AbortReason = "no_malt" }, Notation.Metric));
        Assert.Equal("", AbortWords.Line(new RunState(), Notation.Metric));
    }

    [Fact]
    public void Nobody_has_given_up_an_exercise_that_is_over()
    {
        var state = new RunState { Status = RunStatus.Aborted, AbortReason = RunAborted.ExerciseOver };
        Assert.StartsWith("the exercise is over", AbortWords.Line(state, Notation.Metric), StringComparison.Ordinal);
        var aborted = new RunAborted(1, RunAborted.ExerciseOver);
        Assert.Equal("the exercise is over", new EventWords(Demo.House, Notation.Metric, id => id).Of(aborted, [aborted]));
    }
}
