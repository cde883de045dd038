namespace BrewDeck.Tests.Reference;

/// <summary>
/// A row held to be wrong, or impossible to reach as printed, with the reason. The only list of such rows.
/// </summary>
internal sealed record Dispute(string Topic, string Quantity, string Inputs, string Reason)
{
    public static readonly IReadOnlyList<Dispute> All =
    [
        new("02_sugar_solutions", "SG to degrees Brix", "SG(20/20 apparent)=1.040",
            "the cubic as printed in the same article gives 9.99341, not the article's 9.99325 to 0.00001; the rows of "
            + "that cubic to three decimals are met"),
        new("02_sugar_solutions", "SG to degrees Plato", "SG(20/20 apparent)=1.040",
            "the cubic as printed in the same article gives 9.99353, not the article's 9.99359 to 0.00001; the rows of "
            + "that cubic to three decimals are met"),
        new("02_sugar_solutions", "SG to ICUMSA mass fraction", "SG(20/20 apparent)=1.040",
            "printed to 0.00001 without the air density of the weighing: 1.2 kg/m3 gives 9.99230, and only 1.180 kg/m3 "
            + "gives the printed 9.99249; the difference is 0.0002 % w/w"),
    ];

    public static Dispute? Of(ReferenceRow row) => All.FirstOrDefault(each =>
        each.Topic == row.Topic && each.Quantity == row.Quantity && each.Inputs == row.Inputs);
}
