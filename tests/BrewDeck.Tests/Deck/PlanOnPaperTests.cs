using System.Globalization;
using System.Text.RegularExpressions;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Wording;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Deck;

/// <summary>The plan as a list to work from, by somebody who knows nothing but what stands there.</summary>
public sealed class PlanOnPaperTests
{
    private static readonly Recipe Strong = Demo.Amber with
    {
        Grist = [.. Demo.Amber.Grist, new GristLine("dark syrup", 0.5, 0.8, 0.2, 180, GristUse.Kettle)],
        Others = [new OtherAddition("carrageen", 5, "g", AdditionUse.Boil, 15)],
    };

    [Theory]
    [InlineData(StepKind.Whirlpool, "hoses kettle to P2 pump to kettle (whirlpool inlet).")]
    [InlineData(StepKind.SanitiseChiller, "pump to chiller to kettle.")]
    [InlineData(StepKind.CastOut, "pump to chiller to fermenter.")]
    [InlineData(StepKind.Lauter, "pump to kettle; ")]
    public void Every_pump_has_both_its_ends_named(StepKind kind, string path)
    {
        var plan = Demo.Plan();
        var step = plan.Steps.First(s => s.Spec.Kind == kind);

        var said = HandsWords.Of(step, plan, Notation.Metric)[0];

        Assert.Contains(path, said, StringComparison.Ordinal);
        Assert.StartsWith("Valves shut; hoses ", said, StringComparison.Ordinal);
        Assert.All(said["Valves shut; hoses ".Length..].Split("; "), run => Assert.True(run.Split(" to ").Length >= 3, run));
    }

    /// <summary>Where the kettle heats the liquor, there is no tank whose heat could be off; and no unit is named that is not the reader's.</summary>
    [Fact]
    public void Heat_goes_off_in_the_vessel_that_empties_and_no_litres_are_named_in_gallons()
    {
        var plan = Demo.Plan();
        var step = plan.Steps.First(s => s.Spec.Kind == StepKind.TransferStrike);
        string Said(PlanStep of, Notation notation) => string.Join(" ", HandsWords.Of(of, plan, notation));

        Assert.Contains("Tank heat off first.", Said(step, Notation.Metric), StringComparison.Ordinal);
        var fromKettle = Said(step with { Spec = step.Spec with { Vessel = plan.Brewhouse.Kettle.Id } }, Notation.Metric);
        Assert.Contains("Kettle heat off first.", fromKettle, StringComparison.Ordinal);
        Assert.DoesNotContain("Tank", fromKettle, StringComparison.Ordinal);
        Assert.DoesNotContain("litre", Said(step, new Notation(UnitSystem.Us, TimeZoneInfo.Utc)), StringComparison.OrdinalIgnoreCase);
        Assert.Equal("Raise the kettle by a ring of 972 L or more.", MendWords.Of(new("kettle_extension", 971.04, "L"), Notation.Metric));
        Assert.Equal("Raise the kettle by a ring of 257 gal or more.", MendWords.Of(new("kettle_extension", 971.04, "L"), new Notation(UnitSystem.Us, TimeZoneInfo.Utc)));
        Assert.Equal("Raise the kettle by a ring of 9.7 L or more.", MendWords.Of(new("kettle_extension", 9.7, "L"), Notation.Metric));
    }

    [Fact]
    public void On_the_deck_what_is_moved_is_still_said_from_end_to_end()
    {
        var plan = Demo.Plan();
        string Said(StepKind kind) => HandsWords.AtTheDeck(plan.Steps.First(s => s.Spec.Kind == kind), plan, Notation.Metric)[0];

        Assert.EndsWith("to kettle (whirlpool inlet).", Said(StepKind.Whirlpool), StringComparison.Ordinal);
        Assert.Matches("^Valves shut; kettle to P[12] pump to chiller to fermenter\\.$", Said(StepKind.CastOut));
        Assert.Matches("^Valves shut; tun to P[12] pump to kettle; liquor to P[12] pump to tun\\.$", Said(StepKind.Lauter));
    }

    /// <summary>What is there after the boil and neither stays behind nor reaches the fermenter: a balance of litres with the brewhouse's own losses.</summary>
    [Fact]
    public void What_steams_off_after_the_boil_is_what_the_balance_leaves()
    {
        var plan = Demo.Plan();
        var (habits, hopsKg) = (plan.Brewhouse.Habits, plan.Recipe.Hops.Where(h => h.Use != HopUse.DryHop).Sum(h => h.MassG) / 1000);
        var stays = plan.Brewhouse.Kettle.DeadSpaceL + habits.TrubL + habits.HopAbsorptionLPerKg * hopsKg + habits.LineLossL;

        var said = string.Join(" ", HandsWords.Of(plan.Steps.First(s => s.Spec.Kind == StepKind.KnockOut), plan, Notation.Metric));

        var litres = double.Parse(Regex.Match(said, @"about (\d\.\d) L more steam off").Groups[1].Value, CultureInfo.InvariantCulture);
        Assert.Equal(plan.Totals.PostBoilL - plan.Totals.FermenterL - stays, litres, 0.1);
    }

    /// <summary>A piece of the boil that ends with nothing to add says what ends it.</summary>
    [Fact]
    public void A_piece_of_the_boil_that_ends_for_the_chiller_says_so()
    {
        var plan = Demo.Plan(Demo.Amber with { Hops = [Demo.Amber.Hops[0]], Others = [] });
        var sanitise = plan.Steps.Single(s => s.Spec.Kind == StepKind.SanitiseChiller);
        var pieces = plan.Steps.Where(s => s.Spec.Kind == StepKind.Boil).ToList();

        Assert.All(pieces, p => Assert.Equal(
            p.Spec.Id == sanitise.Spec.AfterStepId, HandsWords.Of(p, plan, Notation.Metric).Contains("Then the chiller is sanitised; it boils on.")));
        Assert.Contains(pieces, p => p.Spec.Id == sanitise.Spec.AfterStepId);
    }

    [Fact]
    public void Syrup_goes_in_by_itself_with_the_heat_off_and_says_why()
    {
        var plan = Demo.Plan(Strong);
        var additions = plan.Steps.Where(s => s.Spec.Kind == StepKind.AddToBoil).ToList();

        var sugar = Assert.Single(additions, s => s.Spec.Charges.Any(c => c.Kind == ChargeKind.Extract));
        Assert.Single(sugar.Spec.Charges);
        // the hands are free for it, and for what goes in after it
        Assert.All(additions.Where(s => s != sugar), s => Assert.False(s.Spec.Minutes > sugar.Spec.Minutes - 2 && s.Spec.Minutes < sugar.Spec.Minutes + 1));
        Assert.InRange(sugar.Spec.Minutes!.Value, 8, 25);
        Assert.True(sugar.Spec.Cautions.HasFlag(Cautions.DryFire));
        var said = string.Join(" ", HandsWords.Of(sugar, plan, Notation.Metric));
        Assert.StartsWith("Heat off first: it sinks, and burns", said, StringComparison.Ordinal);
        Assert.EndsWith("Then heat on.", said, StringComparison.Ordinal);
        Assert.Equal(said, string.Join(" ", HandsWords.Of(sugar with { Spec = sugar.Spec with { Kind = StepKind.AddExtract } }, plan, Notation.Metric)));
    }

    /// <summary>No chiller in the line takes boiling wort through the pump: it would meet the cold wort as the mash left it.</summary>
    [Fact]
    public void Where_a_coil_chills_the_pump_that_casts_out_is_sanitised_with_boiling_wort()
    {
        var coil = Demo.House with { Pumps = [Demo.House.Pumps[0]], Chiller = Demo.House.Chiller with { Kind = ChillerKind.Immersion } };
        string Said(Plan plan) => string.Join(" ", HandsWords.Of(plan.Steps.Single(s => s.Spec.Kind == StepKind.SanitiseChiller), plan, Notation.Metric));

        var pumped = Said(Demo.Plan(house: coil));
        Assert.StartsWith("Valves shut; hoses kettle to pump to kettle.", pumped, StringComparison.Ordinal);
        Assert.Contains("Boiling wort round through the pump", pumped, StringComparison.Ordinal);
        Assert.DoesNotContain("pump", Said(Demo.Plan(house: coil with { Pumps = [] })), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_the_grain_is_lifted_the_basket_goes_in_and_first_wort_hops_find_all_the_wort_there()
    {
        var plan = Demo.Plan();
        var lifting = plan with
        {
            Brewhouse = plan.Brewhouse with { Vessels = [plan.Brewhouse.Vessels[2] with { Roles = VesselRoles.HotLiquor | VesselRoles.Mash | VesselRoles.Boil }] },
        };
        var doughIn = plan.Steps.Single(s => s.Spec.Kind == StepKind.DoughIn);
        var hops = doughIn with { Spec = doughIn.Spec with { Kind = StepKind.AddFirstWortHops, Charges = [] } };
        string Said(PlanStep step, Plan on) => string.Join(" ", HandsWords.Going(step, null, on, Notation.Metric));

        Assert.StartsWith("Grain basket in first", Said(doughIn, lifting), StringComparison.Ordinal);
        Assert.DoesNotContain("basket", Said(doughIn, plan), StringComparison.Ordinal);
        Assert.Equal("Into the wort now, as it heats.", Said(hops, lifting));
        Assert.Equal("Into the kettle before the wort covers its bottom.", Said(hops, plan));
    }

    [Fact]
    public void Water_into_the_kettle_is_not_poured_onto_a_rolling_boil()
    {
        var plan = Demo.Plan();
        var boil = plan.Steps.First(s => s.Spec.Kind == StepKind.Boil);
        var cold = boil with { Spec = boil.Spec with { Kind = StepKind.AddWater, VolumeL = 3, TargetC = 15, Unit = UnitProcedure.Boil } };

        var said = HandsWords.Of(cold, plan, Notation.Metric);
        Assert.Equal("Heat off first: water onto a rolling boil can make it surge.", said[0]);
        Assert.EndsWith("Then heat on.", said[^1], StringComparison.Ordinal);
        Assert.DoesNotContain("surge", string.Join(" ", HandsWords.Of(cold with { Spec = cold.Spec with { Unit = UnitProcedure.Mash } }, plan, Notation.Metric)), StringComparison.Ordinal);
    }

    /// <summary>No step heats it beforehand: at the cleaning the tank is all but empty and cold.</summary>
    [Fact]
    public void Water_to_clean_with_can_be_had_when_it_is_asked_for()
    {
        var plan = Demo.Plan();
        var said = HandsWords.Of(plan.Steps.Single(s => s.Spec.Id == "clean.kettle"), plan, Notation.Metric);

        Assert.Contains("Its water: hot tap, stove, or the hot liquor tank filled and heated now, elements covered.", said);
    }

    [Fact]
    public void Oxygen_has_its_caution()
    {
        var plan = Demo.Plan();
        Assert.Contains(StepWords.Of(plan.Steps.First(s => s.Spec.Kind == StepKind.Aerate), plan).Cautions, c => c.Contains("no flame", StringComparison.Ordinal) && c.Contains("no oil", StringComparison.Ordinal));
    }

    [Fact]
    public void Steps_stand_in_the_order_of_time_and_their_minutes_add_up()
    {
        foreach (var plan in new[] { Demo.Plan(), Demo.Plan(choices: new DayChoices { Start = DateTimeOffset.FromUnixTimeMilliseconds(Quayside.StartMs).AddSeconds(37) }) })
        {
            var steps = PlanLines.Parts(plan).SelectMany(p => p.Steps).ToList();
            Assert.Equal(plan.Steps.Length, steps.Count);
            Assert.Equal(steps.Select(s => Math.Round(s.StartS, 3)).Order(), steps.Select(s => Math.Round(s.StartS, 3)));
            var boil = plan.Steps.Where(s => s.Spec.Kind == StepKind.Boil).ToList();
            Assert.NotEmpty(boil);
            // what ends as another one begins: beginning and length give the next beginning, to the minute
            foreach (var (before, after) in steps.SelectMany(a => steps.Where(b => b.Spec.Vessel == a.Spec.Vessel && Math.Abs(b.StartS - a.EndS) < 1e-6 && a.DurationS >= 60).Select(b => (a, b))))
                Assert.Equal(Minutes(PlanLines.At(before, plan, Notation.Metric)) + Length(PlanLines.Takes(before, plan)), Minutes(PlanLines.At(after, plan, Notation.Metric)));
        }
    }

    [Fact]
    public void A_boil_that_is_cut_says_which_stretch_of_it()
    {
        var plan = Demo.Plan();
        var titles = plan.Steps.Where(s => s.Spec.Kind == StepKind.Boil).Select(s => StepTitles.Of(s, plan, Notation.Metric)).ToList();

        Assert.True(titles.Count > 1);
        Assert.Equal(titles.Count, titles.Distinct().Count());
        Assert.StartsWith("Boil, 60 to ", titles[0], StringComparison.Ordinal);
        Assert.EndsWith(" to 0 min to go", titles[^1], StringComparison.Ordinal);
    }

    /// <summary>Minutes that the stretch before has used up are not promised again.</summary>
    [Fact]
    public void A_stretch_of_the_boil_that_was_cut_says_from_where_it_goes()
    {
        var plan = Demo.Plan();
        var last = plan.Steps.Last(s => s.Spec is { Kind: StepKind.Boil, Label: "" }).Spec;
        string Title(StepSpec spec) => StepTitles.Of(new RunStep(spec, RunStatus.Running), plan, Notation.Metric);

        Assert.Equal($"Boil, {last.Minutes} to 0 min to go", Title(last));
        Assert.Equal($"Boil, {last.Minutes - 4} to 0 min to go", Title(last with { Minutes = last.Minutes - 4.2 }));
    }

    [Fact]
    public void The_weigh_in_marks_each_hop_with_its_time_and_with_the_recipes_own_amount()
    {
        var plan = Demo.Plan();
        var words = string.Join(" ", HandsWords.Of(plan.Steps.First(s => s.Spec.Kind == StepKind.WeighIn), plan, Notation.Metric));

        Assert.Matches(@"\d+ g bittering \(60 min; recipe 50 g\)", words);
        Assert.Matches(@"\d+ g aroma \(10 min\), \d+ g aroma \(stand 15 min\)", words);
        Assert.Contains("5 g carrageen (10 min)", words, StringComparison.Ordinal);
        Assert.Contains("fitted to this brewhouse", PlanText.Plain(plan, Notation.Metric), StringComparison.Ordinal);
    }

    [Fact]
    public void A_day_that_begins_the_evening_before_says_its_date()
    {
        var plan = Demo.Plan(choices: new DayChoices { Finish = new DateTimeOffset(2026, 5, 30, 5, 0, 0, TimeSpan.Zero) });
        Assert.Contains(PlanLines.Totals(plan, Notation.Metric), t => t is { Label: "begins" } && t.Value.StartsWith("2026-05-29 2", StringComparison.Ordinal));
    }

    [Fact]
    public void Little_in_ounces_is_said_in_grams_too() =>
        Assert.Equal(("4 g (0.14 oz)", "1.27 oz"), ((Notation.Metric with { Units = UnitSystem.Us }).Grams(4), (Notation.Metric with { Units = UnitSystem.Us }).Grams(36)));

    [Fact]
    public void Several_refusals_have_one_answer_to_all_of_them()
    {
        Refusal Full(string code, double litresPerKg) => new(code, 80, 62, "L", [new Mend("thicker_mash", litresPerKg, "L/kg")]);
        var lines = RefusalWords.Lines([Full("mash_in_tun", 2.8), Full("mash_in_lauter_tun", 2.6)], Notation.Metric).Select(l => l.ToString()).ToList();

        Assert.Contains("For all of it: Mash thicker: 2.6 L/kg.", lines);
        Assert.DoesNotContain(RefusalWords.Lines([Full("mash_in_tun", 2.8)], Notation.Metric), l => l.ToString().StartsWith("For all", StringComparison.Ordinal));
    }

    /// <summary>A tun without heat that loses a hundredth of this keeps its rest: nothing to say.</summary>
    [Theory]
    [InlineData(5, true)]
    [InlineData(0.05, false)]
    public void A_rest_that_falls_unheated_says_how_far(double lossWPerK, bool told)
    {
        var house = Demo.House with { Vessels = [.. Demo.House.Vessels.Select(v => v.Id == "tun" ? v with { Elements = [], LossWPerK = lossWPerK } : v)] };
        var plan = Demo.Plan(Demo.Amber with { Rests = [Demo.Amber.Rests[0]] }, house: house);
        var rest = Assert.Single(plan.Steps, s => s.Spec.Kind == StepKind.Rest);
        var end = rest.After.Vessels[1].TempC;

        Assert.Equal(told, end < 64);
        Assert.Equal(told, StepWords.Of(rest, plan).Hands.Contains($"Falls to about {Notation.Metric.Temp(end)} by its end, unheated: strike warmer, or insulate."));
    }

    [Fact]
    public void A_rest_that_is_kept_warm_says_nothing_of_a_fall() => Assert.DoesNotContain("Falls to about", PlanText.Plain(Demo.Plan(), Notation.Metric), StringComparison.Ordinal);

    /// <summary>2.95 L/kg for 3.0 was "3.0 L/kg", which the brewer had.</summary>
    [Theory]
    [InlineData(2.95, UnitSystem.Metric, "Mash thicker: 2.95 L/kg.")]
    [InlineData(2.6, UnitSystem.Metric, "Mash thicker: 2.6 L/kg.")]
    [InlineData(2.95, UnitSystem.Us, "Mash thicker: 1.41 qt/lb.")]
    public void A_thickness_that_mends_is_told_to_the_step_of_its_search(double value, UnitSystem units, string said) =>
        Assert.Equal(said, MendWords.Of(new(MendCode.ThickerMash, value, "L/kg"), Notation.Metric with { Units = units }));

    private static int Minutes(string clock) => clock.Split(':') is [var h, var m] ? 60 * int.Parse(h, System.Globalization.CultureInfo.InvariantCulture) + int.Parse(m, System.Globalization.CultureInfo.InvariantCulture) : -1;

    private static int Length(string takes)
    {
        var parts = takes.Split(' ');
        return Enumerable.Range(0, parts.Length / 2).Sum(i => int.Parse(parts[2 * i], System.Globalization.CultureInfo.InvariantCulture) * (parts[2 * i + 1] == "h" ? 60 : 1));
    }
}
