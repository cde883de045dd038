using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;

namespace BrewDeck.Core.Planning;

/// <summary>An element as it is fed today.</summary>
/// <param name="Vessel">Index of the vessel that it heats.</param>
/// <param name="Circuit">Index of the circuit in use that feeds it.</param>
public sealed record Lead(int Vessel, int Circuit, Element Element);

/// <summary>
/// Which circuit in use feeds which element, and which circuits one vessel must hand to the next. Elements switch on their own: one
/// that finds no circuit to carry it stays off as long as its vessel has another.
/// </summary>
public sealed class Wiring
{
    /// <summary>No vessel: the circuit feeds all its elements at once.</summary>
    private const int Nobody = -1;

    private readonly ImmutableArray<bool> _shared;

    private Wiring(ImmutableArray<Circuit> circuits, ImmutableArray<ImmutableArray<Lead>> leads, ImmutableArray<bool> shared) =>
        (Circuits, Leads, _shared) = (circuits, leads, shared);

    public ImmutableArray<Circuit> Circuits { get; }

    /// <summary>For each vessel in the order of the brewhouse.</summary>
    public ImmutableArray<ImmutableArray<Lead>> Leads { get; }

    /// <param name="inUse">Circuits in use today.</param>
    public static Wiring Of(Brewhouse house, ImmutableArray<Circuit> inUse)
    {
        var leads = new List<ImmutableArray<Lead>>();
        for (var v = 0; v < house.Vessels.Length; v++)
            leads.Add(LeadsOf(house.Vessels[v], v, inUse, leads));
        return new(inUse, [.. leads], [.. inUse.Select((c, i) => MustBeHandedOn(c, i, [.. leads]))]);
    }

    /// <summary>The same plugs with some elements dead; a plug stays where it is.</summary>
    /// <param name="dead">Of an element and its number in its vessel, from 1, the strongest first.</param>
    public Wiring Without(Func<Lead, int, bool> dead) =>
        new(Circuits, [.. Leads.Select(of => of.Where((lead, i) => !dead(lead, i + 1)).ToImmutableArray())], _shared);

    /// <summary>What one circuit fed is fed by another, all at once.</summary>
    public Wiring Onto(string fromId, string toId)
    {
        int from = IndexOf(Circuits, fromId), to = IndexOf(Circuits, toId);
        return new(Circuits, [.. Leads.Select(of => of.Select(l => l.Circuit == from ? l with { Circuit = to } : l).ToImmutableArray())], _shared);
    }

    /// <summary>One vessel at a time may draw from it: there are too few sockets, or together it would be too much.</summary>
    public bool IsShared(int circuit) => _shared[circuit];

    /// <summary>A circuit that is handed on feeds the vessel that it is plugged into; any other feeds all.</summary>
    public bool Feeds(Lead lead, ImmutableArray<int> plugs) => !_shared[lead.Circuit] || plugs[lead.Circuit] == lead.Vessel;

    /// <summary>Vessel that each circuit is plugged into in the morning: the liquor tank, else the first that it can feed.</summary>
    public ImmutableArray<int> AtFirst(int tank) => [.. Circuits.Select((_, c) => AtFirst(c, tank))];

    /// <summary>Power of a vessel on a circuit, W.</summary>
    public double LoadW(int vessel, int circuit) =>
        Leads[vessel].Where(l => l.Circuit == circuit).Sum(l => l.Element.PowerW);

    /// <summary>Most that can be on at once on a circuit, W.</summary>
    public double PeakW(int circuit)
    {
        var loads = Enumerable.Range(0, Leads.Length).Select(v => LoadW(v, circuit));
        return _shared[circuit] ? loads.Max() : loads.Sum();
    }

    private int AtFirst(int circuit, int tank)
    {
        if (!_shared[circuit])
            return Nobody;
        var fed = Enumerable.Range(0, Leads.Length).Where(v => LoadW(v, circuit) > 0).ToArray();
        return fed.Contains(tank) ? tank : fed[0];
    }

    private static bool MustBeHandedOn(Circuit circuit, int index, ImmutableArray<ImmutableArray<Lead>> leads)
    {
        var here = leads.SelectMany(l => l).Where(l => l.Circuit == index).ToArray();
        return here.Select(l => l.Vessel).Distinct().Count() > 1
            && (here.Length > circuit.Sockets || here.Sum(l => l.Element.PowerW) > circuit.ContinuousW + 1e-6);
    }

    private static ImmutableArray<Lead> LeadsOf(Vessel vessel, int index, ImmutableArray<Circuit> inUse, List<ImmutableArray<Lead>> before)
    {
        var found = new List<Lead>();
        foreach (var element in vessel.Elements.OrderByDescending(e => e.PowerW))
        {
            double Free(int circuit) => inUse[circuit].ContinuousW
                - found.Where(l => l.Circuit == circuit).Sum(l => l.Element.PowerW) - element.PowerW;
            var home = IndexOf(inUse, element.CircuitId);
            if (home >= 0 && (found.Count == 0 || Free(home) >= -1e-6))
                found.Add(new(index, home, element));
            else if (Borrowed(inUse, before, Free) is { } other)
                found.Add(new(index, other, element));
            else if (found.Count == 0)
                found.Add(new(index, inUse.Length - 1, element));
        }
        return [.. found];
    }

    /// <summary>Of the circuits that can carry it, the one with the fewest users; of equals the one whose user is done last.</summary>
    private static int? Borrowed(ImmutableArray<Circuit> inUse, List<ImmutableArray<Lead>> before, Func<int, double> free)
    {
        int Users(int circuit) => before.Count(l => l.Any(x => x.Circuit == circuit));
        int Latest(int circuit) => before.FindLastIndex(l => l.Any(x => x.Circuit == circuit));
        int? best = null;
        for (var c = 0; c < inUse.Length; c++)
        {
            if (free(c) < -1e-6)
                continue;
            if (best is not { } b || Users(c) < Users(b) || (Users(c) == Users(b) && Latest(c) > Latest(b)))
                best = c;
        }
        return best;
    }

    private static int IndexOf(ImmutableArray<Circuit> circuits, string id)
    {
        for (var i = 0; i < circuits.Length; i++)
        {
            if (circuits[i].Id == id)
                return i;
        }
        return -1;
    }
}
