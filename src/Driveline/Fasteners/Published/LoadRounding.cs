namespace Driveline.Fasteners;

/// <summary>How the standards round the areas and loads they print.</summary>
internal static class LoadRounding
{
    /// <summary>Three significant figures, nearest: ISO 898-1 areas and loads.</summary>
    public static double ToThreeFigures(double value)
    {
        if (value == 0)
        {
            return 0;
        }

        double step = ThreeFigureStep(value);
        return Math.Round(value / step, MidpointRounding.AwayFromZero) * step;
    }

    /// <summary>One unit in the third significant figure.</summary>
    public static double ThreeFigureStep(double value) => Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(value))) - 2);

    /// <summary>SAE J429 loads: to 50 lbf up to 10 000 lbf, to 100 lbf above.</summary>
    public static double ToSaeStep(double poundsForce)
    {
        double step = SaeStep(poundsForce);
        return Math.Round(poundsForce / step, MidpointRounding.AwayFromZero) * step;
    }

    /// <summary>The step of an SAE J429 load: 50 lbf up to and including 10 000 lbf, 100 lbf above.</summary>
    public static double SaeStep(double poundsForce) => poundsForce <= 10000 ? 50 : 100;
}
