using BrewDeck.Deck;

namespace BrewDeck.Tests.Deck;

public sealed class QuantityReaderTests
{
    [Theory]
    [InlineData("65 L", Dimension.Volume, 65)]
    [InlineData("65l", Dimension.Volume, 65)]
    [InlineData(" 65 litres ", Dimension.Volume, 65)]
    [InlineData("65", Dimension.Volume, 65)]
    [InlineData("67,2 L", Dimension.Volume, 67.2)]
    [InlineData("0,750 L", Dimension.Volume, 0.75)]
    [InlineData("6.5gal", Dimension.Volume, 24.605176596)]
    [InlineData("5 gal", Dimension.Volume, 18.92705892)]
    [InlineData("5 imp gal", Dimension.Volume, 22.73045)]
    [InlineData("10 qt", Dimension.Volume, 9.46352946)]
    [InlineData("2 hL", Dimension.Volume, 200)]
    [InlineData("750 mL", Dimension.Volume, 0.75)]
    [InlineData("6 gal 2 qt", Dimension.Volume, 24.605176596)]
    [InlineData("1e1 L", Dimension.Volume, 10)]
    [InlineData("5.2 kg", Dimension.Mass, 5.2)]
    [InlineData("450 g", Dimension.Mass, 0.45)]
    [InlineData("57g", Dimension.Mass, 0.057)]
    [InlineData("11 lb 4 oz", Dimension.Mass, 5.1029141625)]
    [InlineData("11lb4oz", Dimension.Mass, 5.1029141625)]
    [InlineData("2oz", Dimension.Mass, 0.05669904625)]
    [InlineData("2 kg 300 g", Dimension.Mass, 2.3)]
    [InlineData("66 °C", Dimension.Temperature, 66)]
    [InlineData("66", Dimension.Temperature, 66)]
    [InlineData("66°", Dimension.Temperature, 66)]
    [InlineData("67C", Dimension.Temperature, 67)]
    [InlineData("67,2 °C", Dimension.Temperature, 67.2)]
    [InlineData("66 ℃", Dimension.Temperature, 66)]
    [InlineData("−5 °C", Dimension.Temperature, -5)]
    [InlineData("212f", Dimension.Temperature, 100)]
    [InlineData("152.6 °F", Dimension.Temperature, 67)]
    [InlineData("339.15 K", Dimension.Temperature, 66)]
    [InlineData("9 °F", Dimension.TemperatureDifference, 5)]
    [InlineData("5 °C", Dimension.TemperatureDifference, 5)]
    [InlineData("1.048", Dimension.Gravity, 1.048)]
    [InlineData("1,048", Dimension.Gravity, 1.048)]
    [InlineData("1048", Dimension.Gravity, 1.048)]
    [InlineData("1048 SG", Dimension.Gravity, 1.048)]
    [InlineData("0 °P", Dimension.Gravity, 1)]
    [InlineData("60 min", Dimension.Time, 3600)]
    [InlineData("90m", Dimension.Time, 5400)]
    [InlineData("1 h 30", Dimension.Time, 5400)]
    [InlineData("1h30", Dimension.Time, 5400)]
    [InlineData("1 h 30 min 10 s", Dimension.Time, 5410)]
    [InlineData("1:30", Dimension.Time, 5400)]
    [InlineData("1:30:05", Dimension.Time, 5405)]
    [InlineData("1.5 h", Dimension.Time, 5400)]
    [InlineData("3 days", Dimension.Time, 259200)]
    [InlineData("3.45 kW", Dimension.Power, 3450)]
    [InlineData("3450W", Dimension.Power, 3450)]
    [InlineData("0.8 bar", Dimension.Pressure, 80000)]
    [InlineData("39 cm", Dimension.Length, 0.39)]
    [InlineData("5 ft 3 in", Dimension.Length, 1.6002)]
    [InlineData("120 L/h", Dimension.Flow, 2)]
    [InlineData("1 gal/min", Dimension.Flow, 3.785411784)]
    [InlineData("8 EBC", Dimension.Colour, 8)]
    [InlineData("10 SRM", Dimension.Colour, 19.68503937008)]
    [InlineData("3.5 L", Dimension.Colour, 7.836811023622)]
    [InlineData("0.2 °L", Dimension.Colour, 0)]
    [InlineData("75 %", Dimension.Fraction, 0.75)]
    [InlineData("57%", Dimension.Fraction, 0.57)]
    [InlineData("0.75", Dimension.Fraction, 0.75)]
    [InlineData("9 kJ/K", Dimension.HeatCapacity, 9000)]
    [InlineData("4.5 W/K", Dimension.HeatTransfer, 4.5)]
    [InlineData("3 L/kg", Dimension.Thickness, 3)]
    [InlineData("1.25 qt/lb", Dimension.Thickness, 2.607938891256)]
    [InlineData("1.25 qt per lb", Dimension.Thickness, 2.607938891256)]
    [InlineData("230 V", Dimension.Voltage, 230)]
    [InlineData("16 A", Dimension.Current, 16)]
    [InlineData("4.5 kg/h", Dimension.Evaporation, 4.5)]
    [InlineData("32 IBU", Dimension.Bitterness, 32)]
    [InlineData("5.4 pH", Dimension.Acidity, 5.4)]
    [InlineData("2.5", Dimension.Number, 2.5)]
    public void Reads_what_people_write(string text, Dimension dimension, double canonical)
    {
        var read = QuantityReader.Read(text, dimension);
        Assert.Null(read.Why);
        Assert.Equal(canonical, read.Value, 1e-9 * Math.Max(1, Math.Abs(canonical)));
    }

    /// <summary>12 °P is 1.0484 SG (Plato's table, 20/20); °Brix is the same scale for this purpose.</summary>
    [Theory]
    [InlineData("12 °P")]
    [InlineData("12p")]
    [InlineData("12 plato")]
    [InlineData("12 bx")]
    [InlineData("12 °Brix")]
    public void Plato_is_read_as_gravity(string text) =>
        Assert.InRange(QuantityReader.Read(text, Dimension.Gravity).Value, 1.0481, 1.0486);

    [Theory]
    [InlineData("1,500 kg", Dimension.Mass, "'1,500 kg' may be read in two ways: leave thousands unseparated and mark decimals with a point; write a mass such as 5.2 kg, 450 g or 11 lb 4 oz")]
    [InlineData("1,500.5 g", Dimension.Mass, "'1,500.5 g' may be read in two ways: leave thousands unseparated and mark decimals with a point; write a mass such as 5.2 kg, 450 g or 11 lb 4 oz")]
    [InlineData("1'500 g", Dimension.Mass, "'1'500 g' may be read in two ways")]
    [InlineData("1 500 g", Dimension.Mass, "'1 500 g' has a gap or a second number without a unit between; write a mass such as 5.2 kg, 450 g or 11 lb 4 oz")]
    [InlineData("4 oz 11 lb", Dimension.Mass, "'4 oz 11 lb' does not add up to one quantity; write a mass such as 5.2 kg, 450 g or 11 lb 4 oz")]
    [InlineData("11 lb 18 oz", Dimension.Mass, "'11 lb 18 oz' does not add up to one quantity; write a mass such as 5.2 kg, 450 g or 11 lb 4 oz")]
    [InlineData("11 lb 4", Dimension.Mass, "'11 lb 4' does not add up to one quantity; write a mass such as 5.2 kg, 450 g or 11 lb 4 oz")]
    [InlineData("66 L", Dimension.Temperature, "'L' is no unit of temperature; write a temperature such as 66 °C or 152 °F")]
    [InlineData("672 °C", Dimension.Temperature, "'672 °C' cannot be right; write a temperature such as 66 °C or 152 °F")]
    [InlineData("12", Dimension.Gravity, "'12' cannot be right; write a gravity such as 1.048 or 12 °P")]
    [InlineData("75", Dimension.Fraction, "'75' cannot be right; write a share such as 75 % or 0.75")]
    [InlineData("-3 L", Dimension.Volume, "'-3 L' cannot be right; write a volume such as 65 L or 6.5 gal")]
    [InlineData("", Dimension.Volume, "'' is empty; write a volume such as 65 L or 6.5 gal")]
    [InlineData("60 --seed 5", Dimension.Temperature, "'60 --seed 5' cannot be read after 60; write a temperature such as 66 °C or 152 °F")]
    [InlineData("12,5 L -", Dimension.Volume, "'12,5 L -' cannot be read after 12,5; write a volume such as 65 L or 6.5 gal")]
    [InlineData("hot", Dimension.Temperature, "'hot' does not begin with a number; write a temperature such as 66 °C or 152 °F")]
    [InlineData("NaN L", Dimension.Volume, "'NaN L' does not begin with a number; write a volume such as 65 L or 6.5 gal")]
    [InlineData("∞ L", Dimension.Volume, "'∞ L' does not begin with a number; write a volume such as 65 L or 6.5 gal")]
    [InlineData("1e999 L", Dimension.Volume, "'1e999 L' is no finite number; write a volume such as 65 L or 6.5 gal")]
    [InlineData("1:2:3:4", Dimension.Time, "'1:2:3:4' is no time; write a time such as 60 min, 1 h 30 or 1:30")]
    [InlineData("1:75", Dimension.Time, "'1:75' does not add up to one quantity; write a time such as 60 min, 1 h 30 or 1:30")]
    [InlineData("65\u001b[2J L", Dimension.Volume, "'65?[2J L' does not add up to one quantity")]
    public void Refuses_with_what_would_be_right(string text, Dimension dimension, string why)
    {
        var read = QuantityReader.Read(text, dimension);
        Assert.True(double.IsNaN(read.Value));
        Assert.StartsWith(why, read.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bare_number_takes_the_unit_given()
    {
        Assert.Equal(3600, QuantityReader.Read("60", Dimension.Time, "min").Value);
        Assert.Equal(67, QuantityReader.Read("152.6", Dimension.Temperature, "°F").Value);
        Assert.Equal(45, QuantityReader.ReadIn("45", Dimension.Mass, "g").Value);
        Assert.Equal(5000, QuantityReader.ReadIn("5", Dimension.Mass, "g", "kg").Value);
    }

    /// <summary>152.6 °F is 67 °C to the last bit: two brewers' entries give one plan.</summary>
    [Fact]
    public void Fahrenheit_and_Celsius_entries_of_one_temperature_are_equal()
    {
        for (var tenths = -100; tenths <= 1100; tenths++)
        {
            var celsius = (tenths / 10m).ToString(System.Globalization.CultureInfo.InvariantCulture);
            var fahrenheit = (tenths / 10m * 9 / 5 + 32).ToString(System.Globalization.CultureInfo.InvariantCulture);
            Assert.Equal(QuantityReader.Read(celsius + " °C", Dimension.Temperature), QuantityReader.Read(fahrenheit + " °F", Dimension.Temperature));
        }
    }

    [Fact]
    public void An_unknown_unit_in_the_code_is_a_mistake_of_the_code() =>
        Assert.Throws<ArgumentException>(() => QuantityReader.ReadIn("5", Dimension.Mass, "L"));

    [Fact]
    public void No_two_units_of_a_dimension_share_a_spelling()
    {
        foreach (var dimension in Enum.GetValues<Dimension>())
        {
            var spellings = QuantityUnits.Of(dimension).SelectMany(u => u.Spellings.Distinct()).ToArray();
            Assert.Equal(spellings.Distinct(), spellings);
        }
    }
}
