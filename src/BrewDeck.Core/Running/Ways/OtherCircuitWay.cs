using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Ways;

/// <summary>What a tripped circuit fed goes on another one that can carry it beside what it carries for the rest of the day.</summary>
internal sealed class OtherCircuitWay : Way
{
    public override bool Helps(Off off) => off.Kind == OffKind.Power;

    public override IEnumerable<Remedy> Offers(Weigh weigh, Off off)
    {
        var circuits = weigh.Live.Setting.Circuits;
        if (!circuits.Any(c => c.Id == off.About))
            return [];
        var vessel = weigh.State.Steps.FirstOrDefault(s => s.Open && PlantModel.HeatedVessel(weigh.Live.Setting, s.Spec) >= 0)?.Spec.Vessel ?? "";
        var dead = Heated(weigh).Sum(weigh.DeadW);
        return circuits.Where(c => c.Id != off.About && LoadW(weigh, c.Id) <= c.ContinuousW + 1e-6)
            .Select(c => new Remedy(RemedyKind.OtherCircuit, vessel, dead, 0, [], "", [], []) { CircuitId = c.Id, PowerW = dead });
    }

    /// <summary>What a circuit would carry at most from now on, W: of the vessels that are still to be heated, what it feeds and what is dead.</summary>
    public static double LoadW(Weigh weigh, string circuitId)
    {
        var circuit = weigh.Live.Setting.Circuits.Select(c => c.Id).ToList().IndexOf(circuitId);
        return Heated(weigh).Sum(v => weigh.DeadW(v) + weigh.Live.Setting.Wiring.LoadW(v, circuit));
    }

    /// <summary>Vessels that are still to be heated: a tank that is done with stays cold on whatever circuit.</summary>
    private static List<int> Heated(Weigh weigh) =>
        [.. weigh.State.Steps.Where(s => s.Open).Select(s => PlantModel.HeatedVessel(weigh.Live.Setting, s.Spec)).Where(v => v >= 0).Distinct()];
}
