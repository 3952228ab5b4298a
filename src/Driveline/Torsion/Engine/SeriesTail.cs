namespace Driveline.Torsion;

/// <summary>What the cut of a step's series leaves out, for models with universal joints, whose degree no bound fixes beforehand.</summary>
internal static class SeriesTail
{
    /// <summary>The largest last term relative to its series.</summary>
    public static double Of(StepSeries series, Mechanism m)
    {
        double worst = 0;
        for (int i = 0; i < m.Rotors; i++)
        {
            worst = Math.Max(worst, Of(series.Of(series.Speed, i)));
        }

        for (int l = 0; l < m.Links; l++)
        {
            worst = Math.Max(worst, Of(series.Of(series.Twist, l)));
        }

        return worst;
    }

    private static double Of(ReadOnlySpan<double> terms)
    {
        double largest = 0;
        foreach (double term in terms)
        {
            largest = Math.Max(largest, Math.Abs(term));
        }

        double last = Math.Max(Math.Abs(terms[terms.Length - 1]), Math.Abs(terms[terms.Length - 2]));
        return largest == 0 ? 0 : last / largest;
    }
}
