using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace BrewDeck.Core.Running.Ensemble;

/// <summary>
/// Sums over a row of members, four at a time. The vectors have one width on every machine, so the sums are the same on all; a row is as long as there are
/// members, so none is left over.
/// </summary>
internal static class Lanes
{
    /// <summary>A row, moved by the same for all and by so much of another.</summary>
    public static void Move(ReadOnlySpan<float> from, ReadOnlySpan<float> away, float shift, float factor, Span<float> into)
    {
        ReadOnlySpan<Vector128<float>> a = MemoryMarshal.Cast<float, Vector128<float>>(from), b = MemoryMarshal.Cast<float, Vector128<float>>(away);
        var c = MemoryMarshal.Cast<float, Vector128<float>>(into);
        Vector128<float> shifts = Vector128.Create(shift), factors = Vector128.Create(factor);
        for (var i = 0; i < a.Length; i++)
            c[i] = a[i] + shifts + factors * b[i];
    }

    /// <summary>Blocks in single precision, their sums in double: float alone loses the third digit over so many.</summary>
    public static double Dot(ReadOnlySpan<float> a, ReadOnlySpan<float> b)
    {
        ReadOnlySpan<Vector128<float>> x = MemoryMarshal.Cast<float, Vector128<float>>(a), y = MemoryMarshal.Cast<float, Vector128<float>>(b);
        double sum = 0;
        for (var i = 0; i < x.Length; i += 16)
        {
            var block = Vector128<float>.Zero;
            for (var k = i; k < Math.Min(x.Length, i + 16); k++)
                block += x[k] * y[k];
            sum += Vector128.Sum(block);
        }
        return sum;
    }

    /// <summary>Blocks in single precision, as <see cref="Dot"/>.</summary>
    public static double Sum(ReadOnlySpan<float> a)
    {
        var x = MemoryMarshal.Cast<float, Vector128<float>>(a);
        double sum = 0;
        for (var i = 0; i < x.Length; i += 16)
        {
            var block = Vector128<float>.Zero;
            foreach (var v in x[i..Math.Min(x.Length, i + 16)])
                block += v;
            sum += Vector128.Sum(block);
        }
        return sum;
    }
}
