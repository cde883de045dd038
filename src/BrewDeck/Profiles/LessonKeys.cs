using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Learning;

namespace BrewDeck.Profiles;

/// <summary>A number in a brewhouse file: the key, in which table, of which vessel, and what to write.</summary>
/// <param name="Table">Such as <c>habits</c> or <c>vessel.element</c>.</param>
/// <param name="Vessel">Id of the vessel that the table belongs to; empty: the first table of that name.</param>
/// <param name="Nth">Of several tables of that name in the vessel, from 0.</param>
/// <param name="Value">As written in the file.</param>
/// <param name="MayBeNew">Written even where the file has no such key or table.</param>
internal sealed record LessonKey(string Table, string Key, string Vessel, int Nth, string Value, bool MayBeNew = false)
{
    /// <summary>Where an accepted lesson goes; several keys for a vessel with several elements, none for a number that stays.</summary>
    public static IEnumerable<LessonKey> Of(Lesson lesson, Brewhouse house)
    {
        var numbers = lesson.Moves ? Numbers(lesson, house) : [];
        return lesson.ProposedSpread is { } spread ? [.. numbers, Spread(lesson, spread)] : numbers;
    }

    private static LessonKey Spread(Lesson lesson, double spread) =>
        new("spread", lesson.Parameter.Stem == "chiller" ? "heat_transfer" : lesson.Parameter.Stem, "", 0, Percent(Math.Clamp(spread, 0.001, 0.5)), MayBeNew: true);

    private static IEnumerable<LessonKey> Numbers(Lesson lesson, Brewhouse house)
    {
        var value = Rounded(lesson.Proposed);
        return lesson.Parameter.Stem switch
        {
            "net" => house[lesson.Parameter.Vessel].Elements.Select((e, i) =>
                new LessonKey("vessel.element", "net", lesson.Parameter.Vessel, i, Percent(Math.Min(1, e.NetFraction * value / lesson.Current)))),
            "heat_loss" => [new("vessel", "heat_loss", lesson.Parameter.Vessel, 0, Deck.QuantityReader.Text(value, "W/K"))],
            "pump_flow" => [new("pump", "flow", "", 0, Deck.QuantityReader.Text(value, "L/min"))],
            "chiller" => [new("chiller", "heat_transfer", "", 0, Deck.QuantityReader.Text(value, "W/K"))],
            "cast_out_loss" => [new("habits", "trub", "", 0, Deck.QuantityReader.Text(value, "L"))],
            "conversion_yield" => [new("habits", "conversion_yield", "", 0, Percent(value))],
            var stem => [new("habits", stem, "", 0, Deck.QuantityReader.Text(value, lesson.Parameter.Unit))],
        };
    }

    private static string Percent(double value) => Deck.QuantityReader.Text(Rounded(100 * value), "%");

    /// <summary>Four digits: more is not known.</summary>
    private static double Rounded(double value) => Deck.QuantityUnits.Tidy(value, 4);
}
