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
        return circuits.Where(c => c.Id != off.About && LoadW(weigh, c.Id) <= c.ContinuousW + 1e-6)
            .Select(c => new Remedy(RemedyKind.OtherCircuit, vessel, -off.By, 0, [], "", [], []) { CircuitId = c.Id, PowerW = -off.By });
    }

    /// <summary>What a circuit would carry at most from now on: its own vessels that are still to be heated, and what is dead, W.</summary>
    public static double LoadW(Weigh weigh, string circuitId)
    {
        var setting = weigh.Live.Setting;
        var heated = weigh.State.Steps.Where(s => s.Open).Select(s => PlantModel.HeatedVessel(setting, s.Spec)).Where(v => v >= 0).Distinct();
        var circuit = setting.Circuits.Select(c => c.Id).ToList().IndexOf(circuitId);
        return weigh.DeadW() + heated.Sum(v => setting.Wiring.LoadW(v, circuit));
    }
}
