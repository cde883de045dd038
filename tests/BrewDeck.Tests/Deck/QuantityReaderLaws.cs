using BrewDeck.Deck;
using CsCheck;

namespace BrewDeck.Tests.Deck;

public sealed class QuantityReaderLaws
{
    private static readonly Gen<Dimension> AnyDimension = Gen.Enum<Dimension>();

    /// <summary>What is written for a file is read back to the same double.</summary>
    [Fact]
    public void Text_reads_back_to_the_same_number() =>
        Gen.Double[0, 1000].Sample(value =>
        {
            Assert.Equal(value, QuantityReader.ReadIn(QuantityReader.Text(value, "g"), Dimension.Mass, "g").Value);
            Assert.Equal(value, QuantityReader.Read(QuantityReader.Text(value, "L"), Dimension.Volume).Value);
        });

    [Fact]
    public void Any_text_gives_a_value_within_belief_or_a_short_plain_reason() =>
        Gen.Select(Gen.String, AnyDimension).Sample((text, dimension) =>
        {
            var read = QuantityReader.Read(text, dimension);
            if (read.Ok)
                Assert.True(QuantityRange.Of(dimension).Holds(read.Value));
            else
                Assert.True(read.Why!.Length < 250 && !read.Why.Any(char.IsControl));
        });

    /// <summary>Numbers, units and signs in any order reach the odd corners sooner than letters do.</summary>
    [Fact]
    public void Any_run_of_pieces_gives_a_value_or_a_reason()
    {
        var pieces = Gen.OneOf("1", "12", "0.5", ",", ".", "1,5", "-", "+", " ", "e", "e5", "lb", "oz", "h", "min", "°", "C", "F", "%", ":", "L", "L/kg", "'", "_", "\0");
        Gen.Select(pieces.Array[1, 8], AnyDimension).Sample((run, dimension) =>
        {
            var read = QuantityReader.Read(string.Concat(run), dimension);
            Assert.NotEqual(read.Ok, double.IsNaN(read.Value));
        });
    }

    [Fact]
    public void A_space_and_a_decimal_comma_change_nothing() =>
        Gen.Select(Gen.Int[0, 99], Gen.Int[0, 9]).Sample((whole, tenth) =>
            Assert.Equal(QuantityReader.Read($"{whole}.{tenth} gal", Dimension.Volume), QuantityReader.Read($" {whole},{tenth}GAL ", Dimension.Volume)));

    [Fact]
    public void Mixed_entry_is_the_sum_of_its_parts() =>
        Gen.Select(Gen.Int[0, 60], Gen.Int[0, 15]).Sample((pounds, ounces) => Assert.Equal(
            QuantityReader.Read($"{pounds} lb", Dimension.Mass).Value + QuantityReader.Read($"{ounces} oz", Dimension.Mass).Value,
            QuantityReader.Read($"{pounds} lb {ounces} oz", Dimension.Mass).Value,
            1e-10));
}
