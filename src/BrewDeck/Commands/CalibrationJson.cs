using BrewDeck.Core.Planning;
using BrewDeck.Rehearsals;

namespace BrewDeck.Commands;

/// <summary>A calibration as one line of JSON: a documented contract. Widths are in points of gravity, litres, IBU and minutes.</summary>
internal static class CalibrationJson
{
    public static string Of(Calibration calibration, Plan plan, CalibrateOptions options) => JsonOut.Line(json =>
    {
        json.WriteStartObject();
        json.WriteString("recipe", plan.Recipe.Name);
        json.WriteString("brewhouse", plan.Brewhouse.Name);
        json.WriteNumber("seed", options.Seed);
        json.WriteNumber("days", calibration.Days);
        json.WriteNumber("aborted", calibration.Aborted);
        json.WriteBoolean("mends", options.Mends);
        json.Round("hidden_power_percent", options.HiddenPowerPercent, 3);
        json.Round("hidden_yield_points", options.HiddenYieldPoints, 3);
        json.WriteStartArray("figures");
        foreach (var (at, figure, cell) in calibration.Cells)
        {
            var (unit, factor) = CalibrateCommand.UnitOf(figure);
            json.WriteStartObject();
            json.WriteString("figure", CalibrateCommand.Name(figure));
            json.WriteString("at", at);
            json.WriteString("unit", unit);
            json.Round("inside", cell.Inside, 4);
            json.Round("band_width", factor * cell.Width, 3);
            json.Round("truth_less_middle", factor * cell.Off, 3);
            json.Round("chi_squared", cell.ChiSquared, 2);
            json.WriteBoolean("ranks_even", cell.ChiSquared <= CalibrationCell.ChiSquaredBound);
            json.WriteStartArray("ranks");
            foreach (var rank in cell.Ranks)
                json.WriteNumberValue(rank);
            json.WriteEndArray();
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteEndObject();
    });
}
