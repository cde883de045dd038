using System.Collections.Immutable;
using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running;

/// <summary>Volume or gravity of the wort off the plan, from the end of the lauter to knock-out.</summary>
internal static class KettleRemedies
{
    /// <summary>Nearer than this the wort is left alone.</summary>
    private const double NearSg = 0.0015;

    private const double NearestL = 0.6;

    /// <summary>The same for a large batch; share of it.</summary>
    private const double NearShare = 0.015;

    private const double LongestMin = 60;

    private const double MostExtractKg = 3;

    public static ImmutableArray<Remedy> For(Weigh weigh)
    {
        if (weigh.Live.PreBoil is null || weigh.Live.Plant.KnockedOutL > 0 || !ReadSince(weigh.State))
            return [];
        double aimSg = weigh.Plan.Totals.OriginalGravitySg, aimL = weigh.Plan.Totals.FermenterL;
        var offSg = GravitySg(weigh, weigh.Forecast) - aimSg;
        var offL = FermenterL(weigh, weigh.Forecast) - aimL;
        if (Math.Abs(offSg) < NearSg && Math.Abs(offL) < NearL(aimL))
            return [];
        var found = Candidates(weigh, offSg, offL, aimSg, aimL).OfType<Remedy>().Select(weigh.Told)
            .OrderBy(r => Remaining(weigh, r, aimSg, aimL)).ToList();
        return [.. found, weigh.LeaveIt(weigh.Live.Setting.Brewhouse.Kettle.Id)];
    }

    /// <summary>Only a kettle reading calls for a remedy, and only until one has been chosen.</summary>
    private static bool ReadSince(RunState state)
    {
        var kettle = state.Live!.Setting.Brewhouse.Kettle.Id;
        var last = state.Readings.LastOrDefault(r => r.Reading.Vessel == kettle && r.Reading.Kind is ReadingKind.Volume or ReadingKind.Gravity);
        return last is not null && !state.Remedies.Any(r => r.AtMs >= last.AtMs);
    }

    private static IEnumerable<Remedy?> Candidates(Weigh weigh, double offSg, double offL, double aimSg, double aimL)
    {
        if (offSg <= -NearSg)
        {
            yield return Solved(weigh, m => BoilChange(weigh, m), f => GravitySg(weigh, f), aimSg, LongestMin);
            yield return Solved(weigh, kg => Extract(weigh, kg), f => GravitySg(weigh, f), aimSg, MostExtractKg);
        }
        if (offSg >= NearSg)
        {
            yield return Solved(weigh, l => Water(weigh, l), f => GravitySg(weigh, f), aimSg, Room(weigh));
            yield return Solved(weigh, m => BoilChange(weigh, -m), f => GravitySg(weigh, f), aimSg, Shortest(weigh));
        }
        if (offL >= NearL(aimL) && offSg > -NearSg)
            yield return Solved(weigh, m => BoilChange(weigh, m), f => FermenterL(weigh, f), aimL, LongestMin);
        if (offL <= -NearL(aimL) && offSg < NearSg)
            yield return Solved(weigh, l => Water(weigh, l), f => FermenterL(weigh, f), aimL, Room(weigh));
    }

    /// <summary>Of the plant as it stands, like the plan's own figures: the middle of a band leans to where the spread is wider.</summary>
    private static double GravitySg(Weigh weigh, Forecast forecast) => Physics.SugarSolution.SgFromPlato(Fermenter(weigh, forecast).Plato);

    private static double FermenterL(Weigh weigh, Forecast forecast) => Contents.CoolL(Fermenter(weigh, forecast));

    private static VesselState Fermenter(Weigh weigh, Forecast forecast) =>
        (forecast.Rest.IsEmpty ? forecast.Now : forecast.Rest[^1].After).Vessels[weigh.Live.Setting.FermenterIndex];

    private static double NearL(double aimL) => Math.Max(NearestL, NearShare * aimL);

    private static Remedy? Solved(Weigh weigh, Func<double, Remedy?> of, Func<Forecast, double> figure, double aim, double most)
    {
        if (most <= 0 || of(most) is null)
            return null;
        return weigh.Amount(a => of(a)!, figure, aim, most) is { } amount ? of(amount) : null;
    }

    /// <summary>The first piece of the boil that is left is lengthened or shortened: later additions keep their minutes before knock-out.</summary>
    private static Remedy? BoilChange(Weigh weigh, double minutes)
    {
        var piece = weigh.State.Steps.FirstOrDefault(s => s.Open && s.Spec.Kind == StepKind.Boil);
        if (piece is null)
            return null;
        var changed = piece.Spec with { Minutes = Math.Max(0, piece.Spec.Minutes!.Value + minutes) };
        var kind = minutes >= 0 ? RemedyKind.BoilLonger : RemedyKind.BoilShorter;
        return new(kind, piece.Spec.Vessel, Math.Abs(minutes), minutes, [], "", [changed], []);
    }

    /// <summary>Minutes that the piece of boil at hand can still give up.</summary>
    private static double Shortest(Weigh weigh)
    {
        var piece = weigh.State.Steps.FirstOrDefault(s => s.Open && s.Spec.Kind == StepKind.Boil);
        if (piece is null)
            return 0;
        var running = weigh.Live.Running.FirstOrDefault(s => s.Left.Id == piece.Spec.Id);
        return Math.Max(0, (running?.Left.Minutes ?? piece.Spec.Minutes ?? 0) - 1);
    }

    private static double Room(Weigh weigh)
    {
        var kettle = weigh.Live.Setting.Brewhouse.Kettle;
        var v = weigh.Live.Plant.Vessels[weigh.Live.Setting.IndexOf(kettle.Id)];
        return Math.Max(0, kettle.WorkingL - Contents.StandsL(v));
    }

    private static Remedy Water(Weigh weigh, double litres)
    {
        var setting = weigh.Live.Setting;
        var spec = Into(weigh, "water", StepKind.AddWater) with
        {
            VolumeL = litres,
            TargetC = setting.SourceWaterC,
            Cautions = Cautions.Scald | Cautions.Steam,
        };
        return new(RemedyKind.Dilute, spec.Vessel, litres, 0, [spec], Before(weigh), [], []);
    }

    private static Remedy Extract(Weigh weigh, double kg)
    {
        // dried malt extract: about 95 % extract and 5 % water, 16 EBC, common practice, no source
        var charge = new Charge(ChargeKind.Extract, "dried malt extract", kg, "kg", 0.95 * kg, 0.05 * kg, ColourEbc: 16);
        var spec = Into(weigh, "extract", StepKind.AddExtract) with { Charges = [charge], Cautions = Cautions.BoilOver | Cautions.Scald };
        return new(RemedyKind.AddExtract, spec.Vessel, kg, 0, [spec], Before(weigh), [], []);
    }

    private static StepSpec Into(Weigh weigh, string stem, StepKind kind) => new()
    {
        Id = weigh.FreshId(stem),
        Kind = kind,
        Unit = UnitProcedure.Boil,
        Vessel = weigh.Live.Setting.Brewhouse.Kettle.Id,
        HandsS = 120,
    };

    /// <summary>Now: before whatever is running in the kettle or comes next there.</summary>
    private static string Before(Weigh weigh)
    {
        var kettle = weigh.Live.Setting.Brewhouse.Kettle.Id;
        return weigh.State.Steps.FirstOrDefault(s => s.Open && s.Spec.Vessel == kettle)?.Spec.Id ?? "";
    }

    /// <summary>How far from the plan a remedy leaves the day: gravity and volume in steps of what a brewer notices, and minutes lost.</summary>
    private static double Remaining(Weigh weigh, Remedy remedy, double aimSg, double aimL)
    {
        var forecast = weigh.With(remedy);
        return Math.Abs(GravitySg(weigh, forecast) - aimSg) / NearSg + Math.Abs(FermenterL(weigh, forecast) - aimL) / NearL(aimL)
            + Math.Max(0, remedy.Minutes) / 30;
    }
}
