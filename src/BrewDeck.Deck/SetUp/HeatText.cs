using System.Globalization;
using System.Text.RegularExpressions;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.SetUp;

/// <summary>What heats a vessel, as one line: <c>5.5 kW</c>, <c>2 x 3.5 kW</c>, <c>gas 8 kW</c>, <c>steam 45 kW</c>, <c>none</c>.</summary>
/// <param name="Count">Elements or burners; 0: nothing heats it.</param>
/// <param name="Watts">Of each.</param>
/// <param name="Medium">Null: electric.</param>
internal sealed partial record HeatText(int Count, double Watts, HeatMedium? Medium)
{
    private const double Least = 100, MostElectric = 50_000, MostBurner = 1e6;

    private static readonly string[] Words = ["none", "gas", "steam"];

    public static HeatText None { get; } = new(0, 0, null);

    /// <summary>Null when it is no such line. A bare number below 100 is kilowatts: no element has so few watts.</summary>
    public static HeatText? Of(string text, Notation notation) => Of(string.Join(' ', text.Split(' ').Select(word =>
        Array.Find(Words, w => notation.Name(w).Equals(word, StringComparison.OrdinalIgnoreCase)) ?? word)).Replace(',', '.'));

    /// <summary>What is kept as one line, as this brewer writes it.</summary>
    public static string Said(string kept, Notation notation) => string.Join(' ', kept.Split(' ').Select(w => Words.Contains(w) ? notation.Name(w) : notation.Decimals(w)));

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
        HeatMedium? medium = match.Groups["medium"].Value switch { "gas" => HeatMedium.Gas, "steam" => HeatMedium.Steam, _ => null };
        var count = match.Groups["count"].Success ? int.Parse(match.Groups["count"].Value, CultureInfo.InvariantCulture) : 1;
        return read.Ok && read.Value >= Least && read.Value <= (medium is null ? MostElectric : MostBurner) && count is >= 1 and <= 4
            ? new(count, read.Value, medium) : null;
    }

    public override string ToString() => Count == 0 ? "none"
        : (Medium is { } medium ? medium.ToString().ToLowerInvariant() + " " : Count > 1 ? $"{Count} x " : "") + LineReaders.Kw(Watts);

    [GeneratedRegex(@"^((?<medium>gas|steam)\s+|(?<count>[1-4])\s*[x×*]\s*)?(?<power>[0-9].*)$", RegexOptions.ExplicitCapture)]
    private static partial Regex Form();
}
