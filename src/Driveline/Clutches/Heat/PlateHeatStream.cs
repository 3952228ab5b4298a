namespace Driveline.Clutches;

/// <summary>Face temperature of the plates of a clutch, step by step under a flux that changes, with cooling between.</summary>
/// <remarks>
/// The plate of <see cref="PlateHeating"/>, heated evenly on one face and insulated on the other, as its mean and 12 modes: each follows
/// x' = -λ·x + λ·a·q exactly while q is constant over a step, with λ = n²π²·(k/ρc)/L² and a = 2·L/(k·π²·n²). Faster modes follow at once:
/// too hot within the first instants, by at most 0.016·q·L/k. The mean cools as in <see cref="RepeatedSlips"/>: T' = share·P/(m·c) - β·T.
/// </remarks>
internal sealed class PlateHeatStream
{
    private const int Modes = 12;

    private readonly double fluxPerWatt;
    private readonly double meanRatePerFlux;
    private readonly double coolingPerS;
    private readonly double slowestPerS;
    private readonly double firstGain;
    private readonly double restGain;
    private readonly double[] rises = new double[Modes];
    private readonly double[] decays = new double[Modes];
    private double decaysForS = double.NaN;
    private double meanDecay = 1;
    private double meanRiseK;
    private double restK;
    private bool isEven = true;

    public PlateHeatStream(HeatPath path)
    {
        ThermalMaterial plate = path.Plate;
        double thickness = path.ThicknessM;
        fluxPerWatt = path.PlateShare / (path.Faces * path.AreaM2);
        meanRatePerFlux = 1 / (plate.KgPerM3 * plate.JPerKgK * thickness);
        coolingPerS = double.IsNaN(path.LossWPerK) ? 0 : path.LossWPerK / path.CapacityJPerK;
        slowestPerS = Math.PI * Math.PI * plate.DiffusivityM2PerS / (thickness * thickness);
        firstGain = 2 * thickness / (plate.WPerMK * Math.PI * Math.PI);
        double rest = 1.0 / 3;
        for (int n = 1; n <= Modes; n++)
        {
            rest -= 2 / (Math.PI * Math.PI * n * n);
        }

        restGain = rest * thickness / plate.WPerMK;
    }

    /// <summary>Rise of the face over the air, K.</summary>
    public double FaceRiseK
    {
        get
        {
            double rise = meanRiseK + restK;
            foreach (double mode in rises)
            {
                rise += mode;
            }

            return rise;
        }
    }

    /// <summary>The mean rise of the plates, K.</summary>
    public ref double MeanRiseK => ref meanRiseK;

    /// <summary>What the fastest modes add, K.</summary>
    public ref double RestK => ref restK;

    /// <summary>What each mode adds to the face, K.</summary>
    public Span<double> ModesK => rises;

    /// <summary>A step under constant power; 0 while it cools.</summary>
    public void Step(double stepS, double powerW)
    {
        if (isEven && powerW <= 0 && meanRiseK <= 0)
        {
            return;
        }

        if (!stepS.Equals(decaysForS))
        {
            Prepare(stepS);
        }

        double flux = fluxPerWatt * powerW;
        meanRiseK = (meanRiseK * meanDecay) + (flux * meanRatePerFlux * (coolingPerS > 0 ? (1 - meanDecay) / coolingPerS : stepS));
        restK = restGain * flux;
        bool even = flux <= 0;
        for (int n = 0; n < Modes; n++)
        {
            double steady = firstGain / ((n + 1) * (n + 1)) * flux;
            double rise = steady + ((rises[n] - steady) * decays[n]);
            rises[n] = rise < 1e-6 && flux <= 0 ? 0 : rise;
            even &= rises[n].Equals(0.0);
        }

        isEven = even;
    }

    /// <summary>Finds out again whether the plates are evenly warm, after a state was restored.</summary>
    public void Restored()
    {
        isEven = restK.Equals(0.0);
        foreach (double mode in rises)
        {
            isEven &= mode.Equals(0.0);
        }
    }

    private void Prepare(double stepS)
    {
        decaysForS = stepS;
        meanDecay = Math.Exp(-coolingPerS * stepS);
        for (int n = 0; n < Modes; n++)
        {
            decays[n] = Math.Exp(-slowestPerS * (n + 1) * (n + 1) * stepS);
        }
    }
}
