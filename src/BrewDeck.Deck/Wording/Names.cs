using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Alarms;

namespace BrewDeck.Deck.Wording;

/// <summary>The short names of things: vessels, unit procedures, states, kinds of reading.</summary>
public static class Names
{
    /// <summary>A vessel as said in a sentence: "the mash tun".</summary>
    public static string The(Brewhouse brewhouse, string vesselId) => "the " + Vessel(brewhouse, vesselId);

    public static string Vessel(Brewhouse brewhouse, string vesselId)
    {
        var known = brewhouse.Vessels.FirstOrDefault(v => v.Id == vesselId);
        return known is null ? Place(vesselId) : Lower(known.Name);
    }

    public static string Unit(UnitProcedure unit) => unit switch
    {
        UnitProcedure.SetUp => "set up",
        UnitProcedure.HotLiquor => "liquor",
        UnitProcedure.Mash => "mash",
        UnitProcedure.Lauter => "lauter",
        UnitProcedure.Boil => "boil",
        UnitProcedure.Cool => "cool",
        UnitProcedure.Pitch => "pitch",
        UnitProcedure.CleanDown => "clean down",
        _ => Plainly(unit.ToString()),
    };

    public static string Status(RunStatus status) => status switch
    {
        RunStatus.Idle => "waiting",
        RunStatus.Running => "running",
        RunStatus.Held => "held",
        RunStatus.Complete => "done",
        RunStatus.Skipped => "skipped",
        RunStatus.Aborted => "aborted",
        _ => Plainly(status.ToString()),
    };

    public static string Kind(ReadingKind kind) => kind switch
    {
        ReadingKind.Temperature => "temperature",
        ReadingKind.Volume => "volume",
        ReadingKind.Gravity => "gravity",
        ReadingKind.Ph => "pH",
        ReadingKind.Weight => "weight",
        _ => Plainly(kind.ToString()),
    };

    public static string Sparge(SpargeMethod method) => method switch
    {
        SpargeMethod.Fly => "fly",
        SpargeMethod.Batch => "batch",
        SpargeMethod.None => "none",
        _ => Plainly(method.ToString()),
    };

    public static string Alarm(AlarmKind kind) => kind switch
    {
        AlarmKind.CircuitOverloaded => "circuit overloaded",
        AlarmKind.LimitAhead => "limit ahead",
        AlarmKind.VesselTooFull => "vessel too full",
        AlarmKind.ElementsDry => "elements dry",
        AlarmKind.BoilUnattended => "boil unattended",
        AlarmKind.HeatRunsOn => "heat runs on",
        AlarmKind.AdditionLate => "addition late",
        AlarmKind.MashOff => "mash off",
        AlarmKind.HandsLate => "hands late",
        _ => "on hold for long",
    };

    public static string Formula(BitternessFormula formula) => formula switch
    {
        BitternessFormula.Tinseth => "Tinseth",
        BitternessFormula.Rager => "Rager",
        _ => Plainly(formula.ToString()),
    };

    public static string Aim(MattersMost what) => what switch
    {
        MattersMost.Gravity => "gravity",
        MattersMost.Volume => "volume",
        MattersMost.Time => "time",
        _ => Plainly(what.ToString()),
    };

    /// <summary>First letter large.</summary>
    public static string Sentence(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>A stable snake_case name as words, without its unit.</summary>
    public static string Plainly(string code) => code.Replace('_', ' ').Replace('-', ' ').ToLowerInvariant();

    /// <summary>"heat mash" for <c>HeatMash</c>.</summary>
    public static string Spaced(string pascal) =>
        string.Concat(pascal.Select((c, i) => i > 0 && char.IsUpper(c) ? " " + char.ToLowerInvariant(c) : char.ToLowerInvariant(c).ToString()));

    private static string Place(string vesselId) => vesselId switch
    {
        "" => "plant",
        "source" => "source water",
        _ => Plainly(vesselId),
    };

    // "Mash tun" in a list, "the mash tun" in a sentence; names such as "HLT" stay as they are
    internal static string Lower(string name) =>
        name.Length > 1 && char.IsUpper(name[0]) && char.IsLower(name[1]) ? char.ToLowerInvariant(name[0]) + name[1..] : name;
}
