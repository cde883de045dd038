using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Recipes;

namespace BrewDeck.Core.Planning;

/// <content>From the strike liquor to the clear wort.</content>
internal sealed partial class RunSheet
{
    private void Mash()
    {
        if (_tank != _tun)
            TransferStrike();
        if (_batch.Liquor == LiquorOrder.BeforeDoughIn)
            SpargeLiquor();
        DoughIn();
        for (var i = 0; i < Recipe.Rests.Length; i++)
            Rest(i);
        if (_lauterTun != _tun)
        {
            Add("mash.to-lauter", StepKind.TransferMash, UnitProcedure.Mash, s => s with
            {
                Vessel = _tun,
                To = _lauterTun,
                HandsS = 600,
                Cautions = Cautions.Scald | Cautions.Pressure,
            });
        }
        if (_setting.Brewhouse.LiftsGrain)
            return;
        Add("lauter.vorlauf", StepKind.Vorlauf, UnitProcedure.Lauter, s => s with
        {
            Vessel = _lauterTun,
            TargetC = Recipe.Rests[^1].TempC,
            Minutes = 10,
            HandsS = 600,
            Cautions = Cautions.Scald,
        });
    }

    private void TransferStrike()
    {
        Add("mash.prime", StepKind.PrimePump, UnitProcedure.Mash, s => s with
        {
            Vessel = _tank,
            Minutes = 3,
            HandsS = 180,
            Cautions = HotWork,
        });
        Add("mash.transfer", StepKind.TransferStrike, UnitProcedure.Mash, s => s with
        {
            Vessel = _tank,
            To = _tun,
            VolumeL = _batch.StrikeL,
            HandsS = StepSpec.AllThroughS,
            Cautions = Cautions.Scald,
        });
    }

    private void DoughIn() =>
        Add("mash.dough-in", StepKind.DoughIn, UnitProcedure.Mash, s => s with
        {
            Vessel = _tun,
            TargetC = Recipe.Rests[0].TempC,
            Minutes = DoughInMin,
            Charges = RecipeFit.MashCharges(Recipe),
            HandsS = 60 * DoughInMin,
            AfterStepId = "setup.weigh-in",
            Cautions = Cautions.Scald | Cautions.Lifting,
        });

    private void Rest(int i)
    {
        var rest = Recipe.Rests[i];
        if (i > 0)
            Raise(i, rest);
        Add($"mash.rest-{i + 1}", StepKind.Rest, UnitProcedure.Mash, s => s with
        {
            Vessel = _tun,
            TargetC = rest.TempC,
            Minutes = rest.Minutes,
            Label = rest.Name,
            Cautions = _setting.Brewhouse.MashTun.Elements.IsEmpty ? Cautions.None : Cautions.DryFire,
        });
        if (i == 0)
            InfusionLiquor();
        if (_batch.Liquor != LiquorOrder.BeforeDoughIn && i == SpargeRest)
            SpargeLiquor();
    }

    /// <summary>Index of the rest in which the sparge liquor is heated.</summary>
    private int SpargeRest => Infuses ? Recipe.Rests.Length - 1 : _batch.Liquor switch
    {
        LiquorOrder.AfterLastRamp => Recipe.Rests.Length - 1,
        LiquorOrder.LongestRest or LiquorOrder.AllFirstThenLongestRest => Recipe.Rests.IndexOf(Recipe.Rests.MaxBy(r => r.Minutes)!),
        _ => 0,
    };

    private void Raise(int i, MashRest rest)
    {
        if (Infuses)
        {
            Add($"mash.infuse-{i + 1}", StepKind.Infuse, UnitProcedure.Mash, s => s with
            {
                Vessel = _tank,
                To = _tun,
                TargetC = rest.TempC,
                Label = rest.Name,
                HandsS = 600,
                Cautions = Cautions.Scald,
            });
            return;
        }
        if (_setting.Habits.MashHeating == MashHeating.Decoction)
        {
            Decoct(i + 1, rest);
            return;
        }
        Add($"mash.ramp-{i + 1}", StepKind.Ramp, UnitProcedure.Mash, s => s with
        {
            Vessel = _tun,
            TargetC = rest.TempC,
            Label = rest.Name,
            HandsS = 120,
            Cautions = HotWork | Cautions.DryFire,
        });
    }

    /// <summary>Minutes for which a decoction boils: common practice, no source.</summary>
    private const double DecoctionMin = 10;

    private void Decoct(int n, MashRest rest)
    {
        StepSpec Of(StepSpec s, string from, string to, double handsS, Cautions cautions) =>
            s with { Vessel = from, To = to, Label = rest.Name, HandsS = handsS, Cautions = cautions };
        Add($"mash.pull-{n}", StepKind.PullDecoction, UnitProcedure.Mash, s =>
            Of(s, _tun, _kettle, 900, Cautions.Scald | Cautions.Lifting) with { TargetC = rest.TempC, Minutes = DecoctionMin });
        // whoever heats a mash stirs it all the way, or it burns on
        Add($"mash.decoct-{n}", StepKind.HeatDecoction, UnitProcedure.Mash, s =>
            Of(s, _kettle, "", 7200, HotWork | Cautions.DryFire | Cautions.BoilOver));
        Add($"mash.boil-decoction-{n}", StepKind.BoilDecoction, UnitProcedure.Mash, s =>
            Of(s, _kettle, "", 60 * DecoctionMin, HotWork | Cautions.BoilOver | Cautions.Steam) with { Minutes = DecoctionMin });
        Add($"mash.return-{n}", StepKind.ReturnDecoction, UnitProcedure.Mash, s =>
            Of(s, _kettle, _tun, 900, Cautions.Scald | Cautions.Lifting) with { TargetC = rest.TempC });
    }

    private bool Infuses => _setting.Habits.MashHeating == MashHeating.HotWater && Recipe.Rests.Length > 1;

    /// <summary>Hot water for every rise of the mash, drawn and heated as soon as the strike liquor is out of the tank.</summary>
    private void InfusionLiquor()
    {
        if (!Infuses)
            return;
        Add("liquor.fill-infusion", StepKind.Fill, UnitProcedure.HotLiquor, s => s with
        {
            Vessel = _tank,
            VolumeL = TankFillL(_setting, InfusionNeed.Litres(_setting, _batch)) - LeftInTankL,
            HandsS = StepSpec.AllThroughS,
            Cautions = Cautions.Scald | Cautions.MainsNearWater,
        });
        Add("liquor.heat-infusion", StepKind.HeatSparge, UnitProcedure.HotLiquor, s => s with
        {
            Vessel = _tank,
            TargetC = InfusionNeed.LiquorC(_setting),
            Label = "infusion",
            HandsS = 60,
            Background = true,
            Cautions = HotWork | Cautions.DryFire | Cautions.Steam,
        });
    }

    private double LeftInTankL => _setting.Brewhouse.HotLiquorTank.DeadSpaceL;

    /// <summary>Liquor that must stand in the tank for the sparge, and for the coil while the mash is heated through it.</summary>
    private double TankNeedL => Math.Max(
        _batch.SpargeL > 0 ? TankFillL(_setting, _batch.SpargeL) : 0,
        _setting.Habits.MashHeating == MashHeating.Coil && Recipe.Rests.Length > 1 ? _setting.Brewhouse.Coil!.CoverL + 1 : 0);

    private void SpargeLiquor()
    {
        if (TankNeedL <= 0)
            return;
        var left = LeftInTankL + (Infuses ? InfusionNeed.SpareL(_setting, _batch) : 0);
        if (!_batch.FillsOnce && TankNeedL > left)
        {
            Add("liquor.fill-sparge", StepKind.Fill, UnitProcedure.HotLiquor, s => s with
            {
                Vessel = _tank,
                VolumeL = TankNeedL - left,
                HandsS = StepSpec.AllThroughS,
                Cautions = Cautions.Scald | Cautions.MainsNearWater,
            });
            if (_choices.Water is not null)
                Hands("liquor.treat-sparge", StepKind.TreatWater, UnitProcedure.HotLiquor, TreatMin, Cautions.Scald, vessel: _tank, label: "sparge liquor");
        }
        Add("liquor.heat-sparge", StepKind.HeatSparge, UnitProcedure.HotLiquor, s => s with
        {
            Vessel = _tank,
            TargetC = _setting.Habits.SpargeC,
            HandsS = 60,
            Background = true,
            Cautions = HotWork | Cautions.DryFire,
        });
    }
}
