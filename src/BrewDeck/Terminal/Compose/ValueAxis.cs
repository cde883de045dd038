using BrewDeck.Deck.Charts;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Terminal.Compose;

/// <summary>The numbers beside a drawing: whole steps of 1, 2 or 5, far enough apart to be read.</summary>
internal sealed record ValueAxis(double Low, double High, double Step, string Format, Notation Notation)
{
    private const int RowsApart = 3;

    /// <summary>So much of a step above the last mark needs no mark of its own: a boil at 100.3 °C is drawn at 100.</summary>
    private const double Over = 0.05;

    /// <summary>Null when there is nothing to draw.</summary>
    public static ValueAxis? Of(DayChart chart, int rows, Notation notation) => Of(
        chart.Curves.SelectMany(c => c.Planned.Concat(c.Read).Concat(c.Expected)).Select(p => p.Value)
            .Concat(chart.Band is { } band ? [band.Low, band.High] : Array.Empty<double>()),
        chart.Format,
        rows,
        notation);

    /// <summary>Null when there is nothing to draw.</summary>
    public static ValueAxis? Of(IEnumerable<double> all, string format, int rows, Notation notation)
    {
        var values = all.Where(double.IsFinite).ToList();
        if (values.Count == 0 || rows < 2) return null;
        var (low, high) = (values.Min(), values.Max());
        var step = Nice(Math.Max(high - low, Smallest(format)) / Math.Max(1, (rows - 1) / RowsApart), format);
        low = Math.Floor(low / step) * step;
        return new(low, Math.Max(Math.Ceiling(high / step - Over) * step, low + step), step, format, notation);
    }

    private IEnumerable<double> Marks()
    {
        for (var i = 0; Low + i * Step <= High + Step / 2; i++) yield return Low + i * Step;
    }

    private string Text(double value) => Notation.Number(value, Format);

    /// <summary>The row of a value, the highest one 0; kept within the drawing.</summary>
    public int Row(double value, int height) => Math.Clamp((int)((1 - Share(value)) * (height - 0.001)), 0, height - 1);

    /// <summary>The number beside a row; empty: none stands there.</summary>
    private string Label(int row, int height) => Marks().Where(m => Row(m, height) == row).Select(Text).FirstOrDefault("");

    /// <summary>Cells that the numbers and the line beside them take.</summary>
    public int Gutter => Marks().Max(m => Text(m).Length) + 2;

    /// <summary>A row of the drawing with its number and the line beside it.</summary>
    public Line Beside(Line line, int row, int height)
    {
        var label = Label(row, height);
        return Lines.Join(Line.Of(label.PadLeft(Gutter - 1) + (label == "" ? "│" : "┤"), Tone.Muted), line);
    }

    /// <summary>0 at the bottom, 1 at the top.</summary>
    public double Share(double value) => (value - Low) / (High - Low);

    private static double Nice(double step, string format)
    {
        var ten = Math.Pow(10, Math.Floor(Math.Log10(step)));
        var nice = new[] { 1, 2, 5, 10 }.First(n => n * ten >= step * 0.999) * ten;
        return Math.Max(nice, Smallest(format));
    }

    /// <summary>The last digit that the numbers show.</summary>
    private static double Smallest(string format) => Math.Pow(10, -Math.Max(0, format.Length - format.IndexOf('.') - 1) * (format.Contains('.') ? 1 : 0));
}
