using System.Globalization;
using BrewDeck.Deck.Charts;
using BrewDeck.Logbook;
using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Legends;
using OxyPlot.Series;

namespace BrewDeck.Reports.Charts;

/// <summary>
/// Draws a chart as SVG with OxyPlot, whose exporter needs no native library and measures text by itself. Vessels differ by colour, dash and
/// mark, so that a grey print tells them apart.
/// </summary>
internal static class DayDrawing
{
    private const int Width = 860, Height = 250;
    private const double HourS = 3600, LeftMargin = 46, RightMargin = 14;

    // the colours of Okabe and Ito, told apart by most eyes
    private static readonly OxyColor[] Colours =
        [OxyColor.FromRgb(0x00, 0x72, 0xB2), OxyColor.FromRgb(0xD5, 0x5E, 0x00), OxyColor.FromRgb(0x00, 0x7A, 0x58), OxyColor.FromRgb(0x8A, 0x4B, 0x7A), OxyColor.FromRgb(0x55, 0x55, 0x55)];

    private static readonly LineStyle[] Dashes = [LineStyle.Solid, LineStyle.Dash, LineStyle.DashDot, LineStyle.Dot, LineStyle.LongDash];
    private static readonly MarkerType[] Marks = [MarkerType.Circle, MarkerType.Square, MarkerType.Triangle, MarkerType.Diamond, MarkerType.Cross];

    /// <param name="place">Counts the drawings of a page: the names within each stay its own.</param>
    public static Markup Of(DayChart chart, int place)
    {
        var svg = new SvgExporter { Width = Width, Height = Height }.ExportToString(Model(chart));
        svg = svg[svg.IndexOf("<svg", StringComparison.Ordinal)..];
        var size = string.Create(CultureInfo.InvariantCulture, $"width=\"{Width}\" height=\"{Height}\"");
        svg = svg.Replace($"<svg {size}", string.Create(CultureInfo.InvariantCulture, $"<svg viewBox=\"0 0 {Width} {Height}\" role=\"img\""), StringComparison.Ordinal)
            .Replace("id=\"clipPath", $"id=\"c{place}-clipPath", StringComparison.Ordinal)
            .Replace("url(#clipPath", $"url(#c{place}-clipPath", StringComparison.Ordinal);
        return Markup.Raw(svg);
    }

    private static PlotModel Model(DayChart chart)
    {
        var model = new PlotModel { DefaultFont = "Liberation Sans, Arial, sans-serif", DefaultFontSize = 11, PlotAreaBorderThickness = new(1, 0, 0, 1), Background = OxyColors.White };
        model.Axes.Add(new TimeSpanAxis { Position = AxisPosition.Bottom, StringFormat = "h:mm", Minimum = 0, Maximum = chart.EndS, MajorStep = HourS, MinorStep = HourS / 4, MajorGridlineStyle = LineStyle.Solid, MajorGridlineColor = Grid });
        model.Axes.Add(new LinearAxis { Position = AxisPosition.Left, StringFormat = chart.Format, IntervalLength = 32, MinorTickSize = 0, MajorGridlineStyle = LineStyle.Solid, MajorGridlineColor = Grid, MinimumPadding = 0.05, MaximumPadding = 0.08 });
        model.Legends.Add(new Legend { LegendPlacement = LegendPlacement.Outside, LegendPosition = LegendPosition.TopLeft, LegendOrientation = LegendOrientation.Horizontal, LegendBorderThickness = 0, LegendSymbolLength = 28, LegendItemSpacing = 44 });
        // the same on every chart, so that the hours stand below each other
        model.PlotMargins = new OxyThickness(LeftMargin, double.NaN, RightMargin, double.NaN);
        foreach (var curve in chart.Curves)
        {
            model.Series.Add(Line(curve));
            model.Series.Add(Points(curve));
        }

        if (chart.Band is { } band)
            model.Series.Add(Bar(band));
        return model;
    }

    private static ScatterErrorSeries Bar(ChartBand band)
    {
        var bar = new ScatterErrorSeries { MarkerType = MarkerType.None, ErrorBarColor = Colours[^1], ErrorBarStopWidth = 5, ErrorBarStrokeThickness = 2, RenderInLegend = false };
        bar.Points.Add(new ScatterErrorPoint(band.AtS, 0.5 * (band.Low + band.High), 0, band.High - band.Low));
        return bar;
    }

    private static OxyColor Grid => OxyColor.FromRgb(0xDD, 0xDD, 0xDD);

    private static LineSeries Line(DayCurve curve)
    {
        var line = new LineSeries { Title = LegendText(curve.Name), Color = Colours[curve.Vessel % Colours.Length], LineStyle = Dashes[curve.Vessel % Dashes.Length], StrokeThickness = 1.6 };
        line.Points.AddRange(curve.Planned.Select(p => new DataPoint(p.AtS, p.Value)));
        return line;
    }

    /// <summary>With room behind it: the exporter measures by Helvetica and cuts off what a wider font needs more.</summary>
    private static string LegendText(string name) => SafeText.OneLine(name) + "\u00a0\u00a0\u00a0";

    private static ScatterSeries Points(DayCurve curve)
    {
        var colour = Colours[curve.Vessel % Colours.Length];
        var points = new ScatterSeries { MarkerType = Marks[curve.Vessel % Marks.Length], MarkerSize = 4, MarkerFill = colour, MarkerStroke = colour, MarkerStrokeThickness = 1.2, RenderInLegend = false };
        points.Points.AddRange(curve.Read.Select(p => new ScatterPoint(p.AtS, p.Value)));
        return points;
    }
}
