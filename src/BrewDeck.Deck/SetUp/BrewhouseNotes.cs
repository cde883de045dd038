using System.Collections.Immutable;
using System.Globalization;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.SetUp;

/// <summary>Says of the numbers of a new brewhouse file where they come from.</summary>
internal static class BrewhouseNotes
{
    private const string Common = "common practice, replace it by what you measure";

    /// <param name="now">Local time.</param>
    public static ImmutableDictionary<string, string> Of(SetUpSheet sheet, DateTimeOffset now)
    {
        var notes = ImmutableDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (var v in sheet.Vessels.Select(v => v.Id))
        {
            notes[v + ".capacity"] = Told(sheet, v + ".height", "", now);
            notes[v + ".diameter"] = Told(sheet, v + ".diameter", "", now);
            notes[v + ".headroom"] = Common;
            notes[v + ".dead_space"] = Told(sheet, v + ".dead", Typical.DeadSpaceSpread.ToString(), now);
            notes[v + ".heat_capacity"] = "reckoned from the steel of its walls; " + Common;
            notes[v + ".heat_loss"] = sheet.SourceOf(v + ".loss") == AnswerSource.Measured ? Measured(now) : Common;
            notes[v + ".power"] = Told(sheet, v + ".heat", "", now);
            notes[v + ".net"] = Told(sheet, v + ".net", Typical.NetSpread.ToString(), now);
            notes[v + ".covered_at"] = Told(sheet, v + ".cover", "", now);
            if (sheet.HasPlate(v))
            {
                notes[v + ".plate_diameter"] = Told(sheet, v + ".plate_diameter", "", now);
                notes[v + ".rated_load"] = sheet.SourceOf(v + ".plate_load") == AnswerSource.Typed ? Told(sheet, v + ".plate_load", "", now) : "a guess, no maker's rating: check it";
            }
        }
        if (sheet.Rings > 0)
            notes["kettle.ring"] = Told(sheet, "kettle.ring", "", now);
        foreach (var key in (string[])["conversion_yield", "grain_absorption", "sparge_stages", "runoff", "trub", "hop_absorption", "line_loss", "sparge_temperature"])
            notes["habits." + key] = Common;
        notes["habits.mash_thickness"] = "usual 2.5 to 4 L/kg; " + Common;
        notes["habits.evaporation"] = sheet.SourceOf("evaporation") is AnswerSource.Measured or AnswerSource.Typed
            ? Told(sheet, "evaporation", "", now)
            : UsualEvaporation(TrialQuestions.EvaporationIs(sheet));
        foreach (var key in (string[])["pump.shut_off_head", "pump.flow", "pump.power", "coil.effectiveness", "coil.flow", "coil.covered_at", "chiller.heat_transfer", "chiller.water_flow", "chiller.wort_flow", "fermenter.headspace", "fermenter.cooling"])
            notes[key] = Common;
        return notes.ToImmutable();
    }

    private static string UsualEvaporation(Phrase said) => $"{(said.Message == Typical.EvaporationSpread.Message ? "usual " : "")}{said}; {Common}";

    private static string Told(SetUpSheet sheet, string id, string spread, DateTimeOffset now) => sheet.SourceOf(id) switch
    {
        AnswerSource.Measured => Measured(now),
        AnswerSource.Typed => Dated("as told", now),
        _ => spread.Length == 0 ? Common : $"usual {spread}; {Common}",
    };

    private static string Measured(DateTimeOffset now) => Dated("measured", now);

    private static string Dated(string what, DateTimeOffset now) => string.Create(CultureInfo.InvariantCulture, $"{what} {now:yyyy-MM-dd}");
}
