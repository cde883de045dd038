using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Wording;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Deck;

/// <summary>What the core really says has words of its own, not its code with blanks in it.</summary>
public class CodeWordsTests
{
    [Fact]
    public void Every_limit_that_has_a_name_is_worded() => Assert.All(
        NamesIn(typeof(LimitName)).Concat(NamesIn(typeof(RefusalCode))),
        code => Assert.NotEqual(Names.Sentence(Names.Plainly(code)), LimitWords.Name(code, Notation.Metric)));

    [Fact]
    public void Every_mend_that_has_a_code_is_worded() => Assert.All(
        NamesIn(typeof(MendCode)),
        code => Assert.False(MendWords.Of(new(code, 1, ""), Notation.Metric).StartsWith(Names.Sentence(Names.Plainly(code)), StringComparison.Ordinal)));

    [Fact]
    public void Every_decision_that_has_a_code_is_worded() => Assert.All(
        NamesIn(typeof(DecisionCode)).Where(code => code != DecisionCode.StoreTrouble),
        code => Assert.NotEqual($"Not now: {Names.Plainly(code)}.", DecisionWords.Refused(code, Notation.Metric)));

    private static IEnumerable<string> NamesIn(Type type)
    {
        var names = type.GetFields().Where(f => f.IsLiteral).Select(f => (string)f.GetRawConstantValue()!).ToList();
        Assert.NotEmpty(names);
        return names;
    }

    [Fact]
    public void Every_limit_of_a_real_plan_is_worded() => Assert.All(
        Demo.Plan().Limits,
        limit => Assert.NotEqual(Names.Sentence(Names.Plainly(limit.Name)), LimitWords.Name(limit.Name, Notation.Metric)));

    [Theory]
    [InlineData(200, 3)]
    [InlineData(5, 3)]
    [InlineData(-1, 3)]
    [InlineData(40, 9)]
    public void Every_refusal_and_every_mend_is_worded(double batchL, int circuits)
    {
        var result = Planner.Draw(Demo.House, Demo.Amber, new DayChoices { BatchL = batchL, Circuits = circuits });

        var refused = Assert.IsType<PlanResult.Refused>(result);
        Assert.All(refused.Refusals, r => Assert.NotEqual(Names.Sentence(Names.Plainly(r.Code)), LimitWords.Name(r.Code, Notation.Metric)));
        foreach (var mend in refused.Refusals.SelectMany(r => r.Mends))
            Assert.False(MendWords.Of(mend, Notation.Metric).StartsWith(Names.Sentence(Names.Plainly(mend.Code)), StringComparison.Ordinal), mend.Code);
    }

    [Fact]
    public void Every_step_of_a_real_plan_reads_as_sentences()
    {
        var plan = Demo.Plan();
        foreach (var step in plan.Steps)
        {
            var text = StepWords.Of(step, plan).Text;
            Assert.DoesNotContain("  ", text, StringComparison.Ordinal);
            Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
            Assert.DoesNotContain("..", text, StringComparison.Ordinal);
            Assert.EndsWith(".", text, StringComparison.Ordinal);
        }
    }
}
