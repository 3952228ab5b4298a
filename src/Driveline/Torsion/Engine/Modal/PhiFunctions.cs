namespace Driveline.Torsion;

/// <summary>What a mode does in a step: e^z and φ₁, φ₂, φ₃ of a complex z, φₖ₊₁ = (φₖ − 1/k!)/z, φ₀ = e^z.</summary>
internal static class PhiFunctions
{
    private const int Terms = 19;

    // 1/(j+3)!
    private static readonly double[] Third = Factors();

    /// <summary>Real and imaginary parts of e^z, φ₁, φ₂, φ₃ one after the other, eight numbers.</summary>
    public static void Of(double re, double im, Span<double> values)
    {
        if (Math.Abs(re) + Math.Abs(im) < 1)
        {
            Small(re, im, values);
            return;
        }

        double size = Math.Exp(re);
        values[0] = size * Math.Cos(im);
        values[1] = size * Math.Sin(im);
        double inverse = 1 / ((re * re) + (im * im));
        double factorial = 1;
        for (int k = 0; k < 3; k++)
        {
            factorial *= k == 0 ? 1 : k;
            double a = values[2 * k] - (1 / factorial);
            double b = values[(2 * k) + 1];
            values[(2 * k) + 2] = ((a * re) + (b * im)) * inverse;
            values[(2 * k) + 3] = ((b * re) - (a * im)) * inverse;
        }
    }

    private static void Small(double re, double im, Span<double> values)
    {
        double a = 0;
        double b = 0;
        for (int j = Terms - 1; j >= 0; j--)
        {
            double next = (a * re) - (b * im) + Third[j];
            b = (a * im) + (b * re);
            a = next;
        }

        values[6] = a;
        values[7] = b;
        double factorial = 2;
        for (int k = 2; k >= 0; k--)
        {
            double next = (a * re) - (b * im) + (1 / factorial);
            b = (a * im) + (b * re);
            a = next;
            values[2 * k] = a;
            values[(2 * k) + 1] = b;
            factorial = 1;
        }
    }

    private static double[] Factors()
    {
        double[] factors = new double[Terms];
        double factorial = 2;
        for (int j = 0; j < Terms; j++)
        {
            factorial *= j + 3;
            factors[j] = 1 / factorial;
        }

        return factors;
    }
}
