using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Recipes;

namespace BrewDeck.Core.Planning;

/// <summary>Writes the run sheet of a batch: every step from setting up to cleaning down, in the order in which the hands meet them.</summary>
/// <remarks>Minutes of handwork are common practice for one practised pair of hands, no source.</remarks>
internal sealed partial class RunSheet
{
    /// <summary>
    /// Nearer than this to its water a chiller hardly brings wort, and so near without being throttled to a trickle; K (common practice, no source).
    /// </summary>
    private const double ChillsWithinK = 2, ChillsWellK = 4;

    private const Cautions HotWork = Cautions.Scald | Cautions.MainsNearWater;

    private readonly PlantSetting _setting;
    private readonly Batch _batch;
    private readonly DayChoices _choices;
    private readonly List<StepSpec> _steps = [];
    private readonly string _tank;
    private readonly string _tun;
    private readonly string _lauterTun;
    private readonly string _kettle;
    private readonly string _whirlpool;

    private RunSheet(PlantSetting setting, Batch batch, DayChoices choices)
    {
        (_setting, _batch, _choices) = (setting, batch, choices);
        var house = setting.Brewhouse;
        (_tank, _tun, _lauterTun) = (house.HotLiquorTank.Id, house.MashTun.Id, house.LauterTun.Id);
        (_kettle, _whirlpool) = (house.Kettle.Id, house.Whirlpool.Id);
    }

    private Recipe Recipe => _batch.Recipe;

    /// <summary>The fermenter's own cooling takes the wort from the chiller's temperature to the yeast's.</summary>
    private bool CoolsOn => _steps.Exists(s => s.Kind == StepKind.CoolInFermenter);

    public static List<StepSpec> Write(PlantSetting setting, Batch batch, DayChoices choices)
    {
        var sheet = new RunSheet(setting, batch, choices);
        sheet.StrikeLiquor();
        sheet.Mash();
        sheet.Lauter();
        sheet._steps.AddRange(BoilSteps.Write(batch.Recipe, sheet._kettle, sheet.DigOut()));
        sheet.Cool();
        // nobody waits by a fermenter for hours while there is cleaning to do
        if (sheet.CoolsOn)
            sheet.CleanDown();
        sheet.Pitch();
        if (!sheet.CoolsOn)
            sheet.CleanDown();
        return PlugMoves.Into(setting, sheet._steps);
    }

    /// <summary>Liquor to draw so that the tank can give these litres and its elements are covered while it heats, litres at 20 °C.</summary>
    public static double TankFillL(PlantSetting setting, double givesL)
    {
        var tank = setting.Brewhouse.HotLiquorTank;
        // what stays in the vessel that it is mashed in is not lost
        var behind = tank == setting.Brewhouse.MashTun ? 0 : tank.DeadSpaceL;
        return Math.Max(givesL + behind, tank.CoverL + 1);
    }

    private void StrikeLiquor()
    {
        Hands("setup.check", StepKind.CheckFittings, UnitProcedure.SetUp, 10, Cautions.MainsNearWater);
        Add("liquor.fill", StepKind.Fill, UnitProcedure.HotLiquor, s => s with
        {
            Vessel = _tank,
            VolumeL = TankFillL(_setting, _batch.FirstFillL),
            HandsS = StepSpec.AllThroughS,
            Cautions = Cautions.MainsNearWater,
        });
        Hands("liquor.treat", StepKind.TreatWater, UnitProcedure.HotLiquor, TreatMin, Cautions.None, vessel: _tank);
        Add("liquor.heat-strike", StepKind.HeatStrike, UnitProcedure.HotLiquor, s => s with
        {
            Vessel = _tank,
            To = _tun,
            TargetC = Recipe.Rests[0].TempC,
            VolumeL = _batch.StrikeL,
            Minutes = DoughInMin,
            Charges = RecipeFit.MashCharges(Recipe),
            HandsS = 60,
            Background = true,
            Cautions = HotWork | Cautions.DryFire,
        });
        Hands("setup.weigh-in", StepKind.WeighIn, UnitProcedure.SetUp, Math.Min(60, 10 + Recipe.MashKg), Cautions.Lifting, WeighInCharges());
    }

    private void Lauter()
    {
        if (_setting.Brewhouse.LiftsGrain)
        {
            Add("lauter.lift", StepKind.LiftBasket, UnitProcedure.Lauter, s => s with
            {
                Vessel = _kettle,
                Minutes = 15,
                HandsS = 900,
                Cautions = Cautions.Scald | Cautions.Lifting,
            });
        }
        FirstWortHops();
        if (!_setting.Brewhouse.LiftsGrain)
            RunOff();
    }

    private void FirstWortHops()
    {
        var firstWort = Recipe.Hops.Where(h => h.Use == HopUse.FirstWort).Select(RecipeFit.Charge).ToArray();
        if (firstWort.Length > 0)
        {
            Add("boil.first-wort", StepKind.AddFirstWortHops, UnitProcedure.Lauter, s => s with
            {
                Vessel = _kettle,
                Charges = [.. firstWort],
                HandsS = 60,
            });
        }
    }

    private void RunOff()
    {
        if (_choices.Sparge != SpargeMethod.Batch || _batch.SpargeL <= 0)
        {
            RunOff("lauter.run", _batch.PreBoilL, _batch.SpargeL);
            return;
        }
        RunOff("lauter.first", double.PositiveInfinity, 0);
        Add("lauter.sparge-1", StepKind.BatchSparge, UnitProcedure.Lauter, s => s with
        {
            Vessel = _lauterTun,
            SpargeL = _batch.SpargeL,
            Minutes = 15,
            HandsS = 600,
            Cautions = Cautions.Scald,
        });
        RunOff("lauter.second", _batch.PreBoilL, 0);
    }

    private void RunOff(string id, double untilL, double spargeL) =>
        Add(id, spargeL > 0 || id == "lauter.run" ? StepKind.Lauter : StepKind.RunOff, UnitProcedure.Lauter, s => s with
        {
            Vessel = _lauterTun,
            To = _kettle,
            SpargeL = spargeL,
            VolumeL = double.IsFinite(untilL) ? untilL : null,
            HandsS = 300,
            Cautions = HotWork | Cautions.DryFire,
        });

    private void Cool()
    {
        // a switch: it waits for no hands, though they still pour the last hops
        Add("cool.knock-out", StepKind.KnockOut, UnitProcedure.Cool, s => s with
        {
            Vessel = _kettle,
            Minutes = 1,
            Cautions = Cautions.Scald | Cautions.Steam,
        });
        Settle();
        Stand();
        var coil = _setting.Brewhouse.Chiller.IsCoil;
        var target = CastOutC(_setting, Recipe);
        if (coil)
        {
            Add("cool.chill", StepKind.ChillInKettle, UnitProcedure.Cool, s => s with
            {
                Vessel = _whirlpool,
                TargetC = target,
                HandsS = 300,
                Cautions = Cautions.Scald,
            });
        }
        Add("cool.cast-out", StepKind.CastOut, UnitProcedure.Cool, s => s with
        {
            Vessel = _whirlpool,
            To = Places.Fermenter,
            TargetC = target,
            HandsS = 300,
            Cautions = coil ? Cautions.None : Cautions.Scald | Cautions.Pressure,
        });
        if (target > Recipe.Yeast.PitchC)
            Add("cool.fermenter", StepKind.CoolInFermenter, UnitProcedure.Cool, s => s with
            {
                Vessel = Places.Fermenter,
                Label = StepLabels.OwnCooling,
                TargetC = Recipe.Yeast.PitchC,
                HandsS = 60,
            });
    }

    /// <summary>
    /// What the wort is chilled to on its way, °C: the pitching temperature, or as near to the cooling water as a chiller comes in good time where the
    /// fermenter's own cooling can do the rest.
    /// </summary>
    private static double CastOutC(PlantSetting setting, Recipe recipe) =>
        setting.Brewhouse.Fermenter.CoolingW > 0 && recipe.Yeast.PitchC < setting.SourceWaterC + ChillsWithinK
            ? Math.Ceiling(setting.SourceWaterC + ChillsWellK)
            : recipe.Yeast.PitchC;

    private void Pitch()
    {
        Hands("pitch.aerate", StepKind.Aerate, UnitProcedure.Pitch, 5, Cautions.Oxygen, vessel: Places.Fermenter);
        Hands("pitch.pitch", StepKind.Pitch, UnitProcedure.Pitch, 5, Cautions.None, FermenterCharges(), Places.Fermenter);
    }

    /// <summary>Into turning: round the kettle, or by the way in along the wall of a whirlpool.</summary>
    private void Settle()
    {
        if (_whirlpool == _kettle)
        {
            Add("cool.whirlpool", StepKind.Whirlpool, UnitProcedure.Cool, s => s with
            {
                Vessel = _kettle,
                Minutes = 5,
                HandsS = 120,
                Cautions = Cautions.Scald,
            });
            return;
        }
        Add("cool.to-whirlpool", StepKind.TransferWort, UnitProcedure.Cool, s => s with
        {
            Vessel = _kettle,
            To = _whirlpool,
            HandsS = 300,
            Cautions = Cautions.Scald | Cautions.Pressure,
        });
    }

    /// <summary>The hot stand is cut at each whirlpool addition, so that each has its own contact time.</summary>
    private void Stand()
    {
        var hops = Recipe.Hops.Where(h => h.Use == HopUse.Whirlpool).GroupBy(h => h.Minutes).OrderByDescending(g => g.Key).ToList();
        var left = Math.Max(Recipe.StandMin, hops.Count > 0 ? hops[0].Key : 0);
        for (var i = 0; i < hops.Count; i++)
        {
            StandFor(i, left - hops[i].Key);
            left = hops[i].Key;
            Add($"cool.add-{i + 1}", StepKind.AddToWhirlpool, UnitProcedure.Cool, s => s with
            {
                Vessel = _whirlpool,
                Charges = [.. hops[i].Select(RecipeFit.Charge)],
                Minutes = hops[i].Key,
                HandsS = 60,
                Cautions = Cautions.Scald,
            });
        }
        StandFor(hops.Count, left);
    }

    private void StandFor(int i, double minutes)
    {
        if (minutes <= 0)
            return;
        Add($"cool.stand-{i + 1}", StepKind.Stand, UnitProcedure.Cool, s => s with
        {
            Vessel = _whirlpool,
            Minutes = minutes,
            Cautions = Cautions.Scald,
        });
    }

    private void CleanDown()
    {
        // where the boil leaves no time for it
        if (!_steps.Exists(s => s.Id == DigOut().Id))
            _steps.Add(DigOut());
        Hands("clean.kettle", StepKind.Clean, UnitProcedure.CleanDown, 25, Cautions.Caustic | Cautions.Scald | Cautions.MainsNearWater, vessel: _kettle);
        if (_whirlpool != _kettle)
            Hands("clean.whirlpool", StepKind.Clean, UnitProcedure.CleanDown, 15, Cautions.Caustic | Cautions.Scald, vessel: _whirlpool);
        Hands("clean.chiller", StepKind.Clean, UnitProcedure.CleanDown, 15, Cautions.Caustic | Cautions.Scald, label: StepLabels.Chiller);
        Hands("clean.down", StepKind.Clean, UnitProcedure.CleanDown, 10, Cautions.MainsNearWater, label: StepLabels.Down);
    }

    /// <summary>With an analysis salts are weighed and stirred in.</summary>
    private double TreatMin => _choices.Water is null ? 3 : 6;

    /// <summary>While the boil needs no hands.</summary>
    private StepSpec DigOut() => new()
    {
        Id = "clean.tun",
        Kind = StepKind.Clean,
        Unit = UnitProcedure.CleanDown,
        Vessel = _setting.Brewhouse.LiftsGrain ? "" : _lauterTun,
        Label = _setting.Brewhouse.LiftsGrain ? StepLabels.Basket : "",
        Minutes = BoilSteps.DigOutMin,
        HandsS = 60 * BoilSteps.DigOutMin,
        Cautions = Cautions.Scald | Cautions.Lifting | Cautions.MainsNearWater,
    };

    private double DoughInMin => Math.Clamp(5 + 0.5 * Recipe.MashKg, 8, 30);

    private Charge[] WeighInCharges() =>
        [.. Recipe.Grist.Select(RecipeFit.Charge), .. Recipe.Hops.Select(RecipeFit.Charge), .. Recipe.Others.Select(RecipeFit.Charge)];

    private Charge[] FermenterCharges() =>
    [
        new Charge(ChargeKind.Other, Recipe.Yeast.Name, 1, "pitch"),
        .. Recipe.Others.Where(o => o.Use == AdditionUse.Fermenter).Select(RecipeFit.Charge),
    ];

    private void Hands(
        string id, StepKind kind, UnitProcedure unit, double minutes, Cautions cautions, Charge[]? charges = null,
        string vessel = "", string label = "") =>
        Add(id, kind, unit, s => s with
        {
            Vessel = vessel,
            Minutes = minutes,
            HandsS = 60 * minutes,
            Cautions = cautions,
            Charges = [.. charges ?? []],
            Label = label,
        });

    private void Add(string id, StepKind kind, UnitProcedure unit, Func<StepSpec, StepSpec> with) =>
        _steps.Add(with(new StepSpec { Id = id, Kind = kind, Unit = unit }));
}
