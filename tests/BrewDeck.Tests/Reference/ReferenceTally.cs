using System.Collections.Concurrent;

namespace BrewDeck.Tests.Reference;

/// <summary>Counts the rows that were met and prints them, with the disputed ones, when the run ends.</summary>
public sealed class ReferenceTally : IDisposable
{
    private readonly ConcurrentDictionary<string, int> met = new();

    internal void Count(ReferenceRow row) => met.AddOrUpdate(row.Topic, 1, (_, count) => count + 1);

    public void Dispose()
    {
        // a run filtered to other tests has nothing to say
        if (met.IsEmpty) return;
        Console.WriteLine("Reference rows met, by topic:");
        foreach (var (topic, count) in met.OrderBy(each => each.Key, StringComparer.Ordinal))
        {
            var rows = ReferenceData.Rows(topic);
            Console.WriteLine(
                $"  {topic,-22} {count,4} of {rows.Count,4}, informational {rows.Count(row => row.IsInformational)}, "
                + $"disputed {rows.Count(row => Dispute.Of(row) is not null)}");
        }

        Console.WriteLine($"  {"total",-22} {met.Values.Sum(),4}");
        foreach (var dispute in Dispute.All)
            Console.WriteLine($"  disputed: {dispute.Topic}, {dispute.Quantity}, {dispute.Inputs}: {dispute.Reason}");
    }
}
