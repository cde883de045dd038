using System.Globalization;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Fermenting;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Bags;
using BrewDeck.Core.Running.Troubles;

namespace BrewDeck.Logbook;

/// <summary>An event as a row of a table, the same for the page and for the spreadsheet.</summary>
/// <param name="Quantity">What <paramref name="Value"/> measures, snake_case with its unit.</param>
/// <param name="Text">What somebody typed, or what else there is to say; not yet safe to show.</param>
internal sealed record EventRow(
    int Seq,
    string AtUtc,
    string Kind,
    string StepId = "",
    string Vessel = "",
    string Quantity = "",
    double? Value = null,
    string Text = "")
{
    /// <summary><c>brewer</c> or <c>program</c>.</summary>
    public string By { get; init; } = "";

    public static EventRow Of(int seq, RunEvent happened)
    {
        var row = new EventRow(seq, IsoUtc(happened.AtMs), EventKinds.Of(happened)) { By = EventActor.Of(happened) };
        return happened switch
        {
            BatchOpened e => row with
            {
                Text = Invariant($"{e.Plan.Recipe.Name}, {e.Plan.Totals.FermenterL:0.#} L, on {e.Plan.Brewhouse.Name}; ")
                    + Invariant($"{e.Plan.Steps.Length} steps; brewdeck {e.ProgramVersion}"),
            },
            StepStarted e => row with { StepId = e.StepId },
            StepFinished e => row with { StepId = e.StepId, Text = e.Short == true ? "short" : "" },
            StepHeld e => row with { StepId = e.StepId, Text = e.Reason },
            StepResumed e => row with { StepId = e.StepId },
            StepSkipped e => row with { StepId = e.StepId, Text = e.Reason },
            ReadingTaken e => row with
            {
                Vessel = e.Reading.Vessel,
                Quantity = QuantityOf(e.Reading.Kind),
                Value = e.Reading.Value,
                Text = e.Reading.AsTyped,
            },
            RemedyChosen e => row with
            {
                Vessel = e.Remedy.Vessel,
                Quantity = QuantityOf(e.Remedy.Kind),
                Value = e.Remedy.Amount,
            },
            TroubleReported e => Of(row, e.Trouble),
            TroubleCleared e => Of(row, e.Trouble),
            BagWeighed e => row with
            {
                Quantity = e.Bag.Kind == ChargeKind.Hop ? "amount_g" : "amount_kg",
                Value = e.Bag.Amount,
                Text = BagText(e.Bag),
            },
            NoteWritten e => row with { Text = e.Text },
            RunAborted e => row with { Text = e.Reason },
            AlarmRaised e => row with { Vessel = e.Alarm.About, Quantity = SnakeName.Of(e.Alarm.Kind), Value = e.Alarm.Value },
            AlarmCleared e => row with { Vessel = e.About, Quantity = SnakeName.Of(e.Alarm) },
            AlarmAcknowledged e => row with { Vessel = e.About, Quantity = SnakeName.Of(e.Alarm) },
            AlarmShelved e => row with { Vessel = e.About, Quantity = SnakeName.Of(e.Alarm), Text = $"until {IsoUtc(e.UntilMs)}" },
            HandsActed e => row with { Quantity = SnakeName.Of(e.Act) },
            RehearsalMarked e => row with { Quantity = SnakeName.Of(e.Mark) },
            FermenterRead e => row with
            {
                Vessel = Places.Fermenter,
                Quantity = QuantityOf(e.Reading.Figure),
                Value = e.Reading.Value,
                Text = e.Reading.AsTyped,
            },
            AdditionMade e => row with { Vessel = Places.Fermenter, Value = e.Addition.Amount, Text = $"{e.Addition.Unit} {e.Addition.Name}" },
            DateSet e => row with { Quantity = "due_utc", Text = $"{IsoUtc(e.Item.DueMs)} {e.Item.Kind} {e.Item.Name}" },
            BeerPackaged e => row with { Quantity = "volume_l", Value = e.Packaging.VolumeL, Text = Of(e.Packaging) },
            BeerTasted e => row with { Quantity = "rating", Value = e.Rating, Text = e.Text },
            Undone e => row with { Text = Invariant($"takes back {e.Seq}") },
            _ => row,
        };
    }

    /// <summary>UTC, ISO 8601 to the millisecond; a clock that was wrong beyond the calendar gives the plain number.</summary>
    public static string IsoUtc(long atMs) =>
        atMs is >= -62_135_596_800_000 and <= 253_402_300_799_999
            ? DateTimeOffset.FromUnixTimeMilliseconds(atMs).ToString("yyyy-MM-dd'T'HH:mm:ss.fff'Z'", CultureInfo.InvariantCulture)
            : Invariant($"{atMs} ms");

    private static string Of(Packaging packaging) => packaging.Kind == PackageKind.Bottles
        ? Invariant($"bottles; {packaging.Co2Volumes} volumes; {packaging.SugarG:0.#} g {packaging.Sugar}; warmest {packaging.TempC} degC")
        : Invariant($"keg; {packaging.Co2Volumes} volumes; {packaging.PressurePa:0} Pa gauge at {packaging.TempC} degC");

    private static string BagText(Bag bag)
    {
        string[] shares = [Share("alpha", bag.AlphaFraction), Share("moisture", bag.MoistureFraction), Share("extract", bag.ExtractFraction)];
        return string.Join("; ", shares.Where(s => s.Length > 0).Prepend(bag.Name));
    }

    private static string Share(string name, double? fraction) => fraction is { } f ? Invariant($"{name} {100 * f:0.##} %") : "";

    private static EventRow Of(EventRow row, Trouble trouble)
    {
        var named = row with { Quantity = SnakeName.Of(trouble.Kind) };
        return trouble.Kind is TroubleKind.CircuitTripped or TroubleKind.ElementFailed
            ? named with { Vessel = trouble.About }
            : named with { StepId = trouble.About };
    }

    private static string QuantityOf(FermenterFigure figure) => figure switch
    {
        FermenterFigure.Gravity => "gravity_sg",
        FermenterFigure.Temperature => "temp_c",
        _ => "ph",
    };

    private static string QuantityOf(ReadingKind kind) => kind switch
    {
        ReadingKind.Temperature => "temp_c",
        ReadingKind.Volume => "volume_l",
        ReadingKind.Gravity => "gravity_sg",
        ReadingKind.Ph => "ph",
        _ => "mass_kg",
    };

    private static string QuantityOf(RemedyKind kind) => kind switch
    {
        RemedyKind.LeaveIt => "leave_it",
        RemedyKind.HeatMash => "heat_mash_min",
        RemedyKind.AddHotWater => "add_hot_water_l",
        RemedyKind.AddColdWater => "add_cold_water_l",
        RemedyKind.BoilLonger => "boil_longer_min",
        RemedyKind.BoilShorter => "boil_shorter_min",
        RemedyKind.Dilute => "dilute_l",
        RemedyKind.FillUp => "fill_up_l",
        RemedyKind.RunOver => "run_over_l",
        RemedyKind.HeatLiquor => "heat_liquor_c",
        RemedyKind.AddAcid => "add_acid_ml",
        RemedyKind.AddSoda => "add_soda_g",
        RemedyKind.RestBed => "rest_bed_min",
        RemedyKind.Underlet => "underlet_l",
        RemedyKind.RakeBed => "rake_bed_min",
        RemedyKind.OtherCircuit => "other_circuit_w",
        RemedyKind.RunOffMore => "run_off_more_l",
        RemedyKind.RunOffLess => "run_off_less_l",
        RemedyKind.AddNow => "add_now_g",
        RemedyKind.Reweigh => "reweigh_g",
        RemedyKind.SetChiller => "set_chiller_c",
        RemedyKind.ChillFermenter => "chill_fermenter_c",
        RemedyKind.HeatElsewhere => "heat_elsewhere_l",
        RemedyKind.BoilElsewhere => "boil_elsewhere_l",
        RemedyKind.Infuse => "infuse_l",
        RemedyKind.RestOn => "rest_on_min",
        RemedyKind.WaitForRoom => "wait_for_room_c",
        RemedyKind.OwnCooling => "own_cooling_c",
        _ => "add_extract_kg",
    };

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);
}
