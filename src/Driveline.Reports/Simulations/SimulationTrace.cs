using Driveline.Protection;

namespace Driveline.Reports.Simulations;

/// <summary>Torque of one element over time, N·m; a run that is not known is null.</summary>
internal sealed class SimulationTrace
{
    public SimulationTrace(SimulatedLoad load, IReadOnlyList<double>? with, IReadOnlyList<double>? without)
    {
        Load = load;
        With = with;
        Without = without;
    }

    public SimulatedLoad Load { get; }

    public IReadOnlyList<double>? With { get; }

    public IReadOnlyList<double>? Without { get; }

    /// <summary>Largest torque of either run, whatever its direction.</summary>
    public double Most => Math.Max(Load.WithProtection?.NewtonMeters ?? 0, Load.WithoutProtection?.NewtonMeters ?? 0);

    public double Least => (With ?? []).Concat(Without ?? []).DefaultIfEmpty(0).Min();
}
