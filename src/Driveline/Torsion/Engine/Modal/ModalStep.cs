namespace Driveline.Torsion;

/// <summary>What a step of one length does to every mode: q′ = λ·q + g₀ + g₁·t, solved exactly.</summary>
internal sealed class ModalStep
{
    // Of each mode: e^λL, L·φ₁, L²·φ₂, L³·φ₃ as pairs.
    private double[] factors;

    public ModalStep(int modes) => factors = new double[8 * modes];

    /// <summary>Length, s; 0 while it is not filled.</summary>
    public double Length { get; private set; }

    /// <summary>e^λL of each mode, first of eight numbers.</summary>
    public ReadOnlySpan<double> Factors => factors;

    /// <summary>Makes it a step that is not filled.</summary>
    public void Clear() => Length = 0;

    public void Fill(ModalSystem system, double length)
    {
        Length = length;
        if (factors.Length < 8 * system.Modes)
        {
            factors = new double[8 * system.Modes];
        }

        for (int k = 0; k < system.Modes; k++)
        {
            Span<double> of = factors.AsSpan(8 * k, 8);
            PhiFunctions.Of(system.Re[k] * length, system.Im[k] * length, of);
            double scale = 1;
            for (int n = 2; n < 8; n += 2)
            {
                scale *= length;
                of[n] *= scale;
                of[n + 1] *= scale;
            }
        }
    }

    /// <summary>State at the end from the state at the start and the inputs there.</summary>
    public void Advance(ReadOnlySpan<double> q, ReadOnlySpan<double> input, ReadOnlySpan<double> inputRate, Span<double> end) =>
        Combine(0, q, input, inputRate, end);

    /// <summary>∫q dt over the step.</summary>
    public void Integrate(ReadOnlySpan<double> q, ReadOnlySpan<double> input, ReadOnlySpan<double> inputRate, Span<double> integral) =>
        Combine(2, q, input, inputRate, integral, 6);

    private void Combine(
        int first, ReadOnlySpan<double> q, ReadOnlySpan<double> input, ReadOnlySpan<double> inputRate, Span<double> into, int last = 4)
    {
        for (int n = 0, at = first; n < q.Length; n += 2, at += 8)
        {
            double a = factors[at];
            double b = factors[at + 1];
            double c = factors[at + 2];
            double d = factors[at + 3];
            double e = factors[at - first + last];
            double f = factors[at - first + last + 1];
            into[n] = (a * q[n]) - (b * q[n + 1]) + (c * input[n]) - (d * input[n + 1]) + (e * inputRate[n]) - (f * inputRate[n + 1]);
            into[n + 1] = (a * q[n + 1]) + (b * q[n]) + (c * input[n + 1]) + (d * input[n]) + (e * inputRate[n + 1]) + (f * inputRate[n]);
        }
    }
}
