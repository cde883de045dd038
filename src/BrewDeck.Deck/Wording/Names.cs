using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Alarms;

namespace BrewDeck.Deck.Wording;

/// <summary>The short names of things: vessels, unit procedures, states, kinds of reading.</summary>
public static class Names
{
    /// <summary>A vessel as said in a sentence: "the mash tun".</summary>
    public static string The(Brewhouse brewhouse, string vesselId, Notation notation) => notation.Text($"the {Vessel(brewhouse, vesselId, notation)}");

    public static string Vessel(Brewhouse brewhouse, string vesselId, Notation notation)
    {
        var known = brewhouse.Vessels.FirstOrDefault(v => v.Id == vesselId);
        return known is null ? Place(vesselId, notation) : notation.Name(Lower(known.Name), known.Name);
    }

    public static string Unit(UnitProcedure unit, Notation notation) => unit switch
    {
        UnitProcedure.SetUp => notation.Text("set up"),
        UnitProcedure.HotLiquor => notation.Text("liquor"),
        UnitProcedure.Mash => notation.Text("mash"),
        UnitProcedure.Lauter => notation.Text("lauter"),
        UnitProcedure.Boil => notation.Text("boil"),
        UnitProcedure.Cool => notation.Text("cool"),
        UnitProcedure.Pitch => notation.Text("pitch"),
        UnitProcedure.CleanDown => notation.Text("clean down"),
        _ => Plainly(unit.ToString()),
    };

    public static string Status(RunStatus status, Notation notation) => status switch
    {
        RunStatus.Idle => notation.Text("waiting"),
        RunStatus.Running => notation.Text("running"),
        RunStatus.Held => notation.Text("held"),
        RunStatus.Complete => notation.Text("done"),
        RunStatus.Skipped => notation.Text("skipped"),
        RunStatus.Aborted => notation.Text("aborted"),
        _ => Plainly(status.ToString()),
    };

    public static string Kind(ReadingKind kind, Notation notation) => kind switch
    {
        ReadingKind.Temperature => notation.Text("temperature"),
        ReadingKind.Volume => notation.Text("volume"),
        ReadingKind.Gravity => notation.Text("gravity"),
        ReadingKind.Ph => "pH",
        ReadingKind.Weight => notation.Text("weight"),
        _ => Plainly(kind.ToString()),
    };

    public static string Sparge(SpargeMethod method, Notation notation) => method switch
    {
        SpargeMethod.Fly => notation.Text("fly"),
        SpargeMethod.Batch => notation.Text("batch"),
        SpargeMethod.None => notation.Text("none"),
        _ => Plainly(method.ToString()),
    };

    public static string Alarm(AlarmKind kind, Notation notation) => kind switch
    {
        AlarmKind.CircuitOverloaded => notation.Text("circuit overloaded"),
        AlarmKind.LimitAhead => notation.Text("limit ahead"),
        AlarmKind.VesselTooFull => notation.Text("vessel too full"),
        AlarmKind.ElementsDry => notation.Text("elements dry"),
        AlarmKind.BoilUnattended => notation.Text("boil unattended"),
        AlarmKind.HeatRunsOn => notation.Text("heat runs on"),
        AlarmKind.AdditionLate => notation.Text("addition late"),
        AlarmKind.MashOff => notation.Text("mash off"),
        AlarmKind.HandsLate => notation.Text("hands late"),
        _ => notation.Text("on hold for long"),
    };

    public static string Formula(BitternessFormula formula) => formula switch
    {
        BitternessFormula.Tinseth => "Tinseth",
        BitternessFormula.Rager => "Rager",
        _ => Plainly(formula.ToString()),
    };

    public static string Aim(MattersMost what, Notation notation) => what switch
    {
        MattersMost.Gravity => notation.Text("gravity"),
        MattersMost.Volume => notation.Text("volume"),
        MattersMost.Time => notation.Text("time"),
        _ => Plainly(what.ToString()),
    };

    /// <summary>First letter large, but for pH.</summary>
    public static string Sentence(string text) => text.Length == 0 || (text.Length > 1 && char.IsUpper(text[1])) ? text : char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>A stable snake_case name as words, without its unit.</summary>
    public static string Plainly(string code) => code.Replace('_', ' ').Replace('-', ' ').ToLowerInvariant();

    /// <summary>"heat mash" for <c>HeatMash</c>.</summary>
    public static string Spaced(string pascal) =>
        string.Concat(pascal.Select((c, i) => i > 0 && char.IsUpper(c) ? " " + char.ToLowerInvariant(c) : char.ToLowerInvariant(c).ToString()));

    private static string Place(string vesselId, Notation notation) => vesselId switch
    {
        "" => notation.Text("plant"),
        Places.Source => notation.Text("source water"),
        _ => notation.Name(Plainly(vesselId)),
    };

    // "Mash tun" in a list, "the mash tun" in a sentence; names such as "HLT" stay as they are
    internal static string Lower(string name) =>
        name.Length > 1 && char.IsUpper(name[0]) && char.IsLower(name[1]) ? char.ToLowerInvariant(name[0]) + name[1..] : name;
}
