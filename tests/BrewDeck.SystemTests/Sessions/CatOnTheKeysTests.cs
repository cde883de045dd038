using BrewDeck.Commands;
using BrewDeck.Core.Running;
using BrewDeck.Logbook;
using static BrewDeck.SystemTests.Sessions.AtTheKeys;

namespace BrewDeck.SystemTests.Sessions;

/// <summary>A cat walks over the keys of the real program while somebody pulls at the window: nothing breaks, nothing is lost, nothing is given up.</summary>
public sealed class CatOnTheKeysTests
{
    private const int KeysOfACat = 500;

    private static readonly string[] Keys =
    [
        .. " \r\r  0123456789.,@+-*/?abcdefghijklmnopqrstuvwxyzASX".Select(c => c.ToString()),
        Escape, Up, Down, Left, PageDown, "\e[5~", "\e[H", "\e[F", "\t", "\u007f", "\e[15~", "\u00e9",
    ];

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Some_cats(int seed) => Walk(seed);

    /// <summary>100,000 keys and resizes over 200 seeds: <c>-explicit only</c>.</summary>
    [Fact(Explicit = true)]
    public void Two_hundred_cats() => Parallel.For(0, 200, new ParallelOptions { MaxDegreeOfParallelism = 2 }, seed => Walk(1000 + seed));

    private static void Walk(int seed)
    {
        var random = new Random(seed);
        using var at = new AtTheKeys();
        new BrewerByKeys(at, Space, BrewerByKeys.Decimal).Begin(ImportedRecipe.Name, at.DownTo, () => at.Strike(Space, null), Space);
        for (var i = 0; i < KeysOfACat; i++)
        {
            Strike(at, random);
            Assert.NotEmpty(at.Session.Screen.Keys);
            if (at.Session.Ended)
                at.KillAndStartAgain();
        }

        var record = at.Record;
        Assert.DoesNotContain(at.Events, e => e is RunAborted or StepSkipped);
        at.KillAndStartAgain();
        Assert.Equal(record, [.. Journal.Open(new FolderDisk(at.CopyOfFolder()), Workplace.StatusOf).Read(1).Select(AtTheKeys.LineOf)]);
    }

    private static void Strike(AtTheKeys at, Random random)
    {
        at.Wait(TimeSpan.FromMilliseconds(random.Next(30) == 0 ? random.Next(900_000) : random.Next(1500)));
        if (random.Next(40) == 0)
            at.Resize(random.Next(1, 220), random.Next(1, 70));
        else
            at.Strike(Keys[random.Next(Keys.Length)], keep: false);
    }
}
