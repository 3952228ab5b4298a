namespace Driveline.Clutches;

/// <summary>Face temperature of the plates of a clutch, step by step under a flux that changes, with cooling between.</summary>
/// <remarks>
/// The plate of <see cref="PlateHeating"/>, heated evenly on one face and insulated on the other, as its mean and 12 modes: each follows
/// x' = -λ·x + λ·a·q exactly while q is constant over a step (taken to the nanosecond), with λ = n²π²·(k/ρc)/L² and a = 2·L/(k·π²·n²).
/// Faster modes follow at once: too hot within the first instants, by at most 0.016·q·L/k. The mean cools as in
/// <see cref="RepeatedSlips"/>: T' = share·P/(m·c) - β·T.
/// </remarks>
internal sealed class PlateHeatStream
{
    private const int ModeCount = 12;
    private const double LeastK = 1e-6;
    private const double StepsPerS = 1e9;

    private readonly double fluxPerWatt;
    private readonly double meanRatePerFlux;
    private readonly double coolingPerS;
    private readonly double slowestPerS;
    private readonly double restGain;
    private readonly double[] rises = new double[ModeCount];
    private readonly double[] decays = new double[ModeCount];
    private readonly double[] gains = new double[ModeCount];
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
        double firstGain = 2 * thickness / (plate.WPerMK * Math.PI * Math.PI);
        double rest = 1.0 / 3;
        for (int n = 1; n <= ModeCount; n++)
        {
            rest -= 2 / (Math.PI * Math.PI * n * n);
            gains[n - 1] = firstGain / (n * n);
        }

        restGain = rest * thickness / plate.WPerMK;
    }

    /// <summary>The mean rise of the plates, K.</summary>
    public ref double MeanRiseK => ref meanRiseK;

    /// <summary>What the fastest modes add, K.</summary>
    public ref double RestK => ref restK;

    /// <summary>What each mode adds to the face, K; 0 once it adds less than a millionth of a kelvin.</summary>
    public Span<double> ModesK => rises;

    /// <summary>A step under constant power, 0 while it cools: the rise of the face over the air at its end, K.</summary>
    public double Step(double stepS, double powerW)
    {
        if (isEven && powerW <= 0 && meanRiseK <= 0)
        {
            return meanRiseK;
        }

        // Steps of one period differ in their last bits only.
        double roundedS = Math.Round(stepS * StepsPerS);
        if (!roundedS.Equals(decaysForS))
        {
            Prepare(roundedS);
        }

        double flux = fluxPerWatt * powerW;
        meanRiseK = (meanRiseK * meanDecay) + (flux * meanRatePerFlux * (coolingPerS > 0 ? (1 - meanDecay) / coolingPerS : stepS));
        restK = restGain * flux;
        return isEven && flux <= 0 ? meanRiseK : meanRiseK + restK + Modes(flux);
    }

    /// <summary>True when the plates are as warm as the air, so that cooling changes nothing.</summary>
    public bool IsCold => isEven && meanRiseK <= 0;

    /// <summary>
    /// A step without power: the rise of the face over the air at its end, K. What <see cref="Step"/> gives, at less cost.
    /// </summary>
    public double Cool(double stepS)
    {
        if (!isEven || meanRiseK <= 0 || !Math.Round(stepS * StepsPerS).Equals(decaysForS))
        {
            return Step(stepS, 0);
        }

        restK = 0;
        return meanRiseK *= meanDecay;
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

    private double Modes(double flux)
    {
        double[] all = rises, decaying = decays, gain = gains;
        double sum = 0, least = flux > 0 ? 0 : LeastK;
        for (int n = 0; n < all.Length && n < decaying.Length && n < gain.Length; n++)
        {
            double steady = gain[n] * flux;
            double rise = steady + ((all[n] - steady) * decaying[n]);
            rise = rise > least ? rise : 0;
            all[n] = rise;
            sum += rise;
        }

        isEven = flux <= 0 && sum <= 0;
        return sum;
    }

    private void Prepare(double roundedS)
    {
        decaysForS = roundedS;
        double stepS = roundedS / StepsPerS;
        meanDecay = Math.Exp(-coolingPerS * stepS);
        for (int n = 0; n < ModeCount; n++)
        {
            decays[n] = Math.Exp(-slowestPerS * (n + 1) * (n + 1) * stepS);
        }
    }
}
