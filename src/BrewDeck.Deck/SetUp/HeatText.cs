using System.Globalization;
using System.Text.RegularExpressions;

namespace BrewDeck.Deck.SetUp;

/// <summary>What heats a vessel, as one line: <c>5.5 kW</c>, <c>2 x 3.5 kW</c>, <c>gas 8 kW</c>, <c>none</c>.</summary>
/// <param name="Count">Elements or burners; 0: nothing heats it.</param>
/// <param name="Watts">Of each.</param>
internal sealed partial record HeatText(int Count, double Watts, bool Gas)
{
    private const double Least = 100, MostElectric = 50_000, MostGas = 1e6;

    public static HeatText None { get; } = new(0, 0, false);

    /// <summary>Null when it is no such line. A bare number below 100 is kilowatts: no element has so few watts.</summary>
    public static HeatText? Of(string text)
    {
        var line = text.Trim().ToLowerInvariant();
        if (line is "none" or "0")
            return None;
        var match = Form().Match(line);
        if (!match.Success)
            return null;
        var power = match.Groups["power"].Value;
        var bare = double.TryParse(power.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && number < Least ? "kW" : "W";
        var read = QuantityReader.ReadIn(power, Dimension.Power, "W", bare);
        var (gas, count) = (match.Groups["gas"].Success, match.Groups["count"].Success ? int.Parse(match.Groups["count"].Value, CultureInfo.InvariantCulture) : 1);
        return read.Ok && read.Value >= Least && read.Value <= (gas ? MostGas : MostElectric) && count is >= 1 and <= 4
            ? new(count, read.Value, gas) : null;
    }

    public override string ToString() => Count == 0 ? "none"
        : (Gas ? "gas " : Count > 1 ? $"{Count} x " : "") + LineReaders.Kw(Watts);

    [GeneratedRegex(@"^((?<gas>gas)\s+|(?<count>[1-4])\s*[x×*]\s*)?(?<power>[0-9].*)$", RegexOptions.ExplicitCapture)]
    private static partial Regex Form();
}
