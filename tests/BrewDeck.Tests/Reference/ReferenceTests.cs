using System.Globalization;

[assembly: AssemblyFixture(typeof(BrewDeck.Tests.Reference.ReferenceTally))]

namespace BrewDeck.Tests.Reference;

/// <summary>Published values through the functions that the program uses, one case a row.</summary>
public class ReferenceTests(ReferenceTally tally)
{
    public static IEnumerable<TheoryDataRow<string, int>> CheckedRows() => ReferenceTopics.All.Keys
        .SelectMany(ReferenceData.Rows)
        .Where(row => !row.IsInformational && Dispute.Of(row) is null)
        .Select(row => new TheoryDataRow<string, int>(row.Topic, row.Line) { TestDisplayName = row.ToString() });

    [Theory]
    [MemberData(nameof(CheckedRows))]
    public void A_published_value_is_met(string topic, int line)
    {
        var row = ReferenceData.Rows(topic).Single(each => each.Line == line);
        var answer = ReferenceTopics.Answer(row);
        var (low, high) = RowTolerance.Band(row);
        Assert.True(RowTolerance.Allows(row, answer), string.Create(
            CultureInfo.InvariantCulture,
            $"{row}: got {answer:G9}, allowed {low:G9} to {high:G9} ({row.Tolerance}); {row.Source}"));
        tally.Count(row);
    }

    [Fact]
    public void Every_table_on_file_is_answered() =>
        Assert.Equal(ReferenceData.TopicsOnFile(), ReferenceTopics.All.Keys.Order(StringComparer.Ordinal));

    [Fact]
    public void Every_row_is_checked_or_informational_or_disputed()
    {
        var unanswered = ReferenceTopics.All.Keys.SelectMany(ReferenceData.Rows)
            .Where(row => !row.IsInformational && Dispute.Of(row) is null)
            .Where(row => !ReferenceTopics.All[row.Topic].ContainsKey(row.Quantity));
        Assert.Empty(unanswered);
    }

    [Fact]
    public void No_answer_is_left_without_a_row()
    {
        var unused = ReferenceTopics.All.SelectMany(topic => topic.Value.Keys
            .Except(ReferenceData.Rows(topic.Key).Select(row => row.Quantity))
            .Select(quantity => $"{topic.Key}: {quantity}"));
        Assert.Empty(unused);
    }

    [Fact]
    public void A_dispute_names_a_row_that_is_still_missed()
    {
        foreach (var dispute in Dispute.All)
        {
            var row = ReferenceData.Rows(dispute.Topic).Single(each => Dispute.Of(each) == dispute);
            Assert.False(RowTolerance.Allows(row, ReferenceTopics.Answer(row)), $"no longer disputed: {row}");
        }
    }
}
