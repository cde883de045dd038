using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Ways;

/// <summary>Dried malt extract into the hot kettle.</summary>
internal sealed class AddExtractWay : Way
{
    private const double MostKg = 3;

    public override bool Helps(Off off) => off.Kind is OffKind.Wort;

    public override IEnumerable<Remedy> Offers(Weigh weigh, Off off)
    {
        var gravity = Aims.Of(weigh, weigh.Forecast).Gravity;
        var full = weigh.Live.PreBoil is not null || weigh.HasRunOff;
        return gravity.Near || gravity.By > 0 || !full || weigh.Live.Plant.KnockedOutL > 0
            ? []
            : OneOf(weigh.MeetingOrNearing(a => a.Gravity, MostKg, kg => Of(weigh, kg)));
    }

    private static Remedy Of(Weigh weigh, double kg)
    {
        // dried malt extract: about 95 % extract and 5 % water, 16 EBC, common practice, no source
        var charge = new Charge(ChargeKind.Extract, "dried malt extract", kg, "kg", 0.95 * kg, 0.05 * kg, ColourEbc: 16);
        return Now(weigh, RemedyKind.AddExtract, kg, new StepSpec
        {
            Id = weigh.FreshId("extract"),
            Kind = StepKind.AddExtract,
            Unit = UnitProcedure.Boil,
            Vessel = weigh.Kettle.Id,
            Charges = [charge],
            HandsS = 120,
            Cautions = Cautions.BoilOver | Cautions.Scald,
        });
    }
}
