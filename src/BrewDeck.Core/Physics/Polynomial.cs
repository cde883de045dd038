namespace BrewDeck.Core.Physics;

/// <summary>Horner evaluation, lowest power first: the form in which the coefficients below are written.</summary>
internal static class Polynomial
{
    internal static double At(ReadOnlySpan<double> coefficients, double x)
    {
        var sum = 0.0;
        for (var i = coefficients.Length - 1; i >= 0; i--) sum = sum * x + coefficients[i];
        return sum;
    }

    internal static double SlopeAt(ReadOnlySpan<double> coefficients, double x)
    {
        var sum = 0.0;
        for (var i = coefficients.Length - 1; i >= 1; i--) sum = sum * x + i * coefficients[i];
        return sum;
    }
}
