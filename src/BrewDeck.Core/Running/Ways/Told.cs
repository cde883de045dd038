using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Planning.Operations;
using BrewDeck.Core.Running.Ensemble;

namespace BrewDeck.Core.Running.Ways;

/// <summary>What a remedy costs and gives, from the forecast of the day with it.</summary>
internal static class Told
{
    /// <summary>Four of five thermometer readings are nearer than this to the truth; K.</summary>
    private static readonly double MashErrorK = 1.2816 * Math.Sqrt(
        UsualSpreads.ThermometerBias.Sd * UsualSpreads.ThermometerBias.Sd + UsualSpreads.ThermometerNoise.Sd * UsualSpreads.ThermometerNoise.Sd);

    public static Remedy Of(Weigh weigh, Off off, Remedy remedy)
    {
        var after = weigh.With(remedy);
        var minutes = (after.Outlook.FinishMs.P50 - weigh.Otherwise.Outlook.FinishMs.P50) / 60_000;
        var water = remedy.Added.Sum(s => s.Kind is StepKind.Fill or StepKind.AddWater or StepKind.FreeBed ? s.VolumeL ?? 0 : 0);
        var mass = MassG(remedy.Added) + remedy.Replace.Sum(s => MassG([s]) - MassG([weigh.State.Step(s.Id)!.Spec]));
        var watts = after.Rest.Where(s => remedy.Added.Any(i => i.Id == s.Spec.Id)).Max(s => s.PowerW);
        return remedy with
        {
            Minutes = minutes,
            Gives = [.. Shifts.Between(weigh.Otherwise, after), .. Ph(weigh, remedy), .. Mash(weigh, off, remedy, after)],
            WaterL = water > 0 ? water : remedy.WaterL,
            MassG = mass != 0 ? mass : null,
            PowerW = watts ?? remedy.PowerW,
            Closest = Bounds.Of(weigh, remedy, after).MinBy(l => l.Margin / l.Bound),
        };
    }

    /// <summary>What comes of it, against the plan.</summary>
    public static Remedy LeaveIt(Weigh weigh, Off off)
    {
        var aims = Aims.Of(weigh, weigh.Forecast);
        var vessel = off.Kind == OffKind.Pitch ? Places.Fermenter : weigh.State.Step(off.About)?.Spec.Vessel ?? (weigh.Live.Setting.IndexOf(off.About) >= 0 ? off.About : weigh.Kettle.Id);
        // a day that never comes to its end has no figures
        if (off.Kind == OffKind.Power && weigh.Never is { } never)
            return new(RemedyKind.LeaveIt, never.Spec.Vessel, 0, 0, [], "", [], []) { Never = never.Spec.Kind, Ahead = BoilElsewhereWay.MayOpen(weigh, never) };
        // nor has a bed that lets nothing through
        if (off is { Kind: OffKind.Runoff, By: <= -1 } && weigh.State.Step(off.About) is { } run)
            return new(RemedyKind.LeaveIt, vessel, 0, 0, [], "", [], []) { Never = run.Spec.Kind };
        var planned = weigh.State.MsAt(weigh.Plan.Totals.DayS, 0);
        ImmutableArray<Shift> gives =
        [
            // what this is about comes first: a list has room for two
            .. Pitch(weigh, off),
            .. Mash(weigh, off),
            .. Noticed("original_gravity_sg", aims.Gravity, 0.0005, weigh.Forecast.Outlook.OriginalGravitySg),
            .. Noticed("fermenter_l", aims.Volume, 0.1, weigh.Forecast.Outlook.FermenterL),
            .. Noticed("bitterness_ibu", aims.Bitterness, 0.5, weigh.Forecast.Outlook.BitternessIbu),
            // what was late before is no fault of what is off now
            .. off.Kind is not (OffKind.Runoff or OffKind.Power or OffKind.Pitch) ? [] : Noticed("finish_ms", new(weigh.Forecast.Outlook.FinishMs.P50, planned, 1), 300_000, weigh.Forecast.Outlook.FinishMs),
        ];
        return new(RemedyKind.LeaveIt, vessel, 0, 0, [], "", [], gives);
    }

    /// <summary>The middle that the outlook and the other ways show, so that one page has one figure.</summary>
    private static IEnumerable<Shift> Noticed(string figure, Aim aim, double least, Figure shown) =>
        Math.Abs(aim.By) >= least ? [new Shift(figure, aim.Plan, shown.P50) { Low = shown.P10, High = shown.P90 }] : [];

    /// <summary>What the mash comes to, as sure as a thermometer is.</summary>
    private static IEnumerable<Shift> Mash(Weigh weigh, Off off, Remedy remedy, Forecast after) =>
        RestOf(weigh, off) is { } rest
        && remedy.Insert.Length > 0 && after.Rest.TakeWhile(s => s.Spec.Id != rest.Spec.Id || rest.Status == RunStatus.Running)
            .LastOrDefault(s => remedy.Insert.Any(i => i.Id == s.Spec.Id) || s.Spec.Kind == StepKind.DoughIn) is { } step
            ? [Celsius(MashC(weigh, rest), step.After.Vessels[weigh.Live.Setting.IndexOf(rest.Spec.Vessel)].TempC)]
            : [];

    private static IEnumerable<Shift> Mash(Weigh weigh, Off off) =>
        RestOf(weigh, off) is { Spec.TargetC: { } wanted } rest ? [Celsius(wanted, MashC(weigh, rest))] : [];

    /// <summary>The rest that a mash, or the liquor for it, is off for; null: something else is off.</summary>
    private static RunStep? RestOf(Weigh weigh, Off off) => off.Kind switch
    {
        OffKind.Mash => weigh.State.Step(off.About),
        OffKind.Liquor => weigh.State.Steps.FirstOrDefault(s => s is { Status: RunStatus.Idle, Spec.Kind: StepKind.Rest }),
        _ => null,
    };

    private static double MashC(Weigh weigh, RunStep rest) => weigh.Before(rest).Vessels[weigh.Live.Setting.IndexOf(rest.Spec.Vessel)].TempC;

    private static Shift Celsius(double before, double after) => new("mash_c", before, after) { Low = after - MashErrorK, High = after + MashErrorK };

    private static IEnumerable<Shift> Pitch(Weigh weigh, Off off) => off.Kind != OffKind.Pitch ? [] : Noticed(
        "pitch_c", new(weigh.Forecast.Outlook.PitchC.P50, weigh.Plan.Recipe.Yeast.PitchC, 1), 0.2, weigh.Forecast.Outlook.PitchC);

    private static IEnumerable<Shift> Ph(Weigh weigh, Remedy remedy) =>
        from step in remedy.Replace
        where step.ExpectedPh is not null && remedy.Kind is RemedyKind.AddAcid or RemedyKind.AddSoda
        let read = weigh.State.Readings.Last(r => r.Reading.Kind == ReadingKind.Ph).Reading.Value
        select new Shift("mash_ph", read, step.ExpectedPh!.Value) { Low = step.ExpectedPh - MashPhWay.ErrorPh, High = step.ExpectedPh + MashPhWay.ErrorPh };

    private static double MassG(IEnumerable<StepSpec> steps) => steps.Where(s => s.Kind.EndsBy() == EndsBy.Act).SelectMany(s => s.Charges).Sum(c => c.Unit switch
    {
        "kg" => 1000 * c.Amount,
        "g" => c.Amount,
        _ => 0,
    });
}

/// <summary>What a remedy's forecast is held against.</summary>
internal static class Bounds
{
    public static IEnumerable<Limit> Of(Weigh weigh, Remedy remedy, Forecast after)
    {
        var setting = remedy.BoilsIn is { } vessel ? weigh.Live.Setting.BoilingIn(vessel) : weigh.Live.Setting;
        for (var i = 0; i <= setting.FermenterIndex; i++)
        {
            var index = i;
            double Fullest(Forecast day) => day.Rest.Select(s => Contents.StandsL(s.After.Vessels[index])).DefaultIfEmpty(0).Max();
            // what is over the mark already is no fault of a remedy that adds nothing to it
            if (Fullest(after) > Fullest(weigh.Forecast) + 1e-6)
                yield return new(LimitName.Fullest(i == setting.FermenterIndex ? Places.Fermenter : setting.Brewhouse.Vessels[i].Id), Fullest(after), setting.WorkingL(i), "L");
        }
        foreach (var step in after.Rest.Where(s => remedy.Added.Any(i => i.Id == s.Spec.Id) && s.Spec.Kind.EndsBy() == EndsBy.Temperature))
            yield return new(LimitName.Heats(step.Spec.Id), step.DurationS, Heating.HopelessS - 1, "s");
        // what breaks without it too is no fault of it
        foreach (var broken in LimitChecks.OfRest(setting, after.Now, after.Rest).Where(l => !l.Ok && !weigh.Broken.Contains(l.Name)))
            yield return broken;
        if (remedy.CircuitId is { } circuit && setting.Circuits.FirstOrDefault(c => c.Id == circuit) is { } carries)
            yield return new(LimitName.Load(circuit), OtherCircuitWay.LoadW(weigh, circuit) / 1000, carries.ContinuousW / 1000, "kW");
    }
}
