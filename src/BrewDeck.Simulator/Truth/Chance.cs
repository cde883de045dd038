namespace BrewDeck.Simulator.Truth;

/// <summary>
/// Repeatable numbers from a seed (SplitMix64). Every purpose has its own named stream: a new parameter never shifts the numbers of
/// the others, so old seeds keep their days.
/// </summary>
public sealed class Chance(int seed, string stream)
{
    private ulong _state = Mix((ulong)(uint)seed * 0x9E3779B97F4A7C15 ^ NameHash(stream));

    /// <summary>Even in [0, 1).</summary>
    public double Even()
    {
        _state += 0x9E3779B97F4A7C15;
        return (Mix(_state) >> 11) * (1.0 / (1UL << 53));
    }

    /// <summary>Normal with mean 0 and standard deviation 1, cut at 3.</summary>
    public double Normal()
    {
        while (true)
        {
            // Box-Muller; 1 - Even keeps the logarithm finite
            var z = Math.Sqrt(-2 * Math.Log(1 - Even())) * Math.Cos(2 * Math.PI * Even());
            if (Math.Abs(z) <= 3)
                return z;
        }
    }

    /// <summary>Log-normal around a median.</summary>
    public double LogNormal(double median, double logSd) => median * Math.Exp(logSd * Normal());

    private static ulong Mix(ulong z)
    {
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }

    /// <summary>FNV-1a: string.GetHashCode differs from run to run.</summary>
    private static ulong NameHash(string name)
    {
        var hash = 14695981039346656037UL;
        foreach (var c in name)
            hash = (hash ^ c) * 1099511628211UL;
        return hash;
    }
}
