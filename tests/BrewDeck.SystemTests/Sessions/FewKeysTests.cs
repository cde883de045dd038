using System.Globalization;
using BrewDeck.Core.Running;
using static BrewDeck.SystemTests.Sessions.AtTheKeys;

namespace BrewDeck.SystemTests.Sessions;

/// <summary>A whole day needs few keys.</summary>
public sealed class FewKeysTests
{
    [Fact]
    public void A_day_needs_only_space_enter_arrows_and_digits()
    {
        using var at = new AtTheKeys();
        var brewer = new BrewerByKeys(at, Space, Digits);
        brewer.Begin(ImportedRecipe.Name, at.DownTo, () => at.Strike(Space, null), Enter);
        brewer.Until(s => s.Status == RunStatus.Complete);

        Assert.NotEmpty(at.Session.State!.Readings);
        Assert.All(at.Struck, key => Assert.Contains(key, (string[])[Space, Enter, Up, Down, .. "0123456789".Select(c => c.ToString())]));
    }

    [Fact]
    public void A_day_needs_only_the_keypad()
    {
        using var at = new AtTheKeys();
        var brewer = new BrewerByKeys(at, Enter, BrewerByKeys.Decimal);
        brewer.Begin(ImportedRecipe.Name, row => at.Strike((row + 1).ToString(CultureInfo.InvariantCulture), null), () => at.Strike(Enter, null), Enter);
        brewer.Until(s => s.Status == RunStatus.Complete);

        Assert.NotEmpty(at.Session.State!.Readings);
        Assert.All(at.Struck, key => Assert.Contains(key, (string[])[Enter, ".", "+", "-", "*", "/", .. "0123456789".Select(c => c.ToString())]));
    }

    /// <summary>No point: whole degrees and litres, gravity as the hydrometer's scale has it.</summary>
    private static string Digits(ReadingKind kind, double value) =>
        (kind == ReadingKind.Gravity ? value * 1000 : value).ToString("0", CultureInfo.InvariantCulture);
}
