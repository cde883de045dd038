using System.Globalization;
using System.Text.RegularExpressions;

namespace BrewDeck.Tests.Reference;

/// <summary>
/// One published check value. Inputs read "name=value unit; name=value unit" or, in some rows, a free phrase: then the
/// numbers are taken in the order in which they stand. Provenance: "read" was seen in the source, "memory" recalls a
/// printed value, "computed-from-published-equation" checks the arithmetic but not the choice of equation, and "common
/// practice, no source" is a fact of the trade.
/// </summary>
internal sealed partial record ReferenceRow(
    string Topic,
    int Line,
    string Quantity,
    string Inputs,
    string Expected,
    string Unit,
    string Tolerance,
    string Source,
    string Provenance)
{
    public bool IsInformational => Tolerance.StartsWith("informational", StringComparison.Ordinal);

    public override string ToString() => $"{Topic}:{Line} {Quantity} | {Inputs} = {Expected} {Unit}";

    public bool Has(string name) => TryText(name) is not null;

    /// <summary>The text after "name=".</summary>
    public string Text(string name) => TryText(name) ?? throw new FormatException($"no input '{name}' in: {this}");

    /// <summary>The first number of a named input, as written.</summary>
    public double this[string name] => NumbersIn(Text(name)).First();

    /// <summary>The n-th number anywhere in the inputs, from 0.</summary>
    public double Number(int index) => NumbersIn(Inputs).ElementAt(index);

    public double Celsius(string name) => RowUnits.Celsius(this[name], UnitOf(name));

    /// <summary>In the SI unit (or litre) of the named input: see <see cref="RowUnits"/>.</summary>
    public double Si(string name) => this[name] * RowUnits.Factor(UnitOf(name));

    public double Fraction(string name) => this[name] / 100.0;

    public static IEnumerable<double> NumbersIn(string text) =>
        NumberPattern().Matches(text).Select(match => double.Parse(match.Value, CultureInfo.InvariantCulture));

    private string UnitOf(string name)
    {
        var text = Text(name);
        var match = NumberPattern().Match(text);
        return text[(match.Index + match.Length)..].Trim();
    }

    private string? TryText(string name) =>
        Inputs.Split(';', StringSplitOptions.TrimEntries)
            .FirstOrDefault(part => part.StartsWith(name + "=", StringComparison.Ordinal))?[(name.Length + 1)..];

    // not a digit of a name ("V1", "CO2"), and a dash between numbers is a range, not a sign
    [GeneratedRegex(@"(?<![A-Za-z\d._])-?\d+(\.\d+)?(e[+-]?\d+)?")]
    private static partial Regex NumberPattern();
}
