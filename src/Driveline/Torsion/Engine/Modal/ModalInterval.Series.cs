namespace Driveline.Torsion;

/// <content>The modes over the interval as polynomials.</content>
internal sealed partial class ModalInterval
{
    /// <summary>The track over the interval as a polynomial; only where it has no ripple.</summary>
    public ReadOnlySpan<double> Series(in Track track, double travelled)
    {
        Terms();
        int width = system.Width;
        ReadOnlySpan<double> row = system.Row(track.Row);
        int first = track.IsTravel ? 1 : 0;
        for (int j = 0; j <= degree; j++)
        {
            double value = ModalSystem.Dot(row, terms.AsSpan(j * width, width));
            value += j == 0 ? motion.Offset[track.Row] + (motion.OffsetRate[track.Row] * From) : 0;
            value += j == 1 ? motion.OffsetRate[track.Row] * Length : 0;
            coefficients[j + first] = track.IsTravel ? value * Length / (j + 1) : value;
        }

        coefficients[0] = track.IsTravel ? travelled : coefficients[0];
        return coefficients.AsSpan(0, degree + 1);
    }

    // Derivatives of the modes at the left, over factorials, per interval.
    private void Terms()
    {
        if (hasTerms)
        {
            return;
        }

        hasTerms = true;
        double reach = 0;
        for (int k = 0; k < system.Modes; k++)
        {
            reach = swing[k] > 0 || system.Size[k] * Length > SlowReach ? reach : Math.Max(reach, system.Size[k] * Length);
        }

        degree = StepSeries.DegreeFor(reach);
        int width = system.Width;
        for (int k = 0, n = 0; k < system.Modes; k++, n += 2)
        {
            double a = leftRate[n];
            double b = leftRate[n + 1];
            terms[n] = left[n];
            terms[n + 1] = left[n + 1];
            terms[width + n] = a;
            terms[width + n + 1] = b;
            bool isFast = system.Size[k] * Length > SlowReach;
            for (int j = 2; j <= degree; j++)
            {
                double gain = isFast ? 0 : Length / j;
                double c = gain * ((system.Re[k] * a) - (system.Im[k] * b) + (j == 2 ? motion.InputRate[n] * Length : 0));
                b = gain * ((system.Re[k] * b) + (system.Im[k] * a) + (j == 2 ? motion.InputRate[n + 1] * Length : 0));
                a = c;
                terms[(j * width) + n] = a;
                terms[(j * width) + n + 1] = b;
            }
        }
    }
}
