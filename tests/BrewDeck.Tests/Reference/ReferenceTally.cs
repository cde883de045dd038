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
            Console.WriteLine($"  {topic,-22} {count,4} of {ReferenceData.Rows(topic).Count(row => !row.IsInformational),4}");
        Console.WriteLine($"  {"total",-22} {met.Values.Sum(),4}");
        foreach (var dispute in Dispute.All)
            Console.WriteLine($"  disputed: {dispute.Topic}, {dispute.Quantity}, {dispute.Inputs}: {dispute.Reason}");
    }
}
