using Driveline.Torsion;

namespace Driveline.Cases.Results;

/// <summary>A rotor or an element of a model in a run of it.</summary>
internal readonly struct InRun
{
    private const double Same = 1e-9;

    public InRun(TransientResult run, string name)
    {
        Run = run;
        Name = name;
    }

    public TransientResult Run { get; }

    public string Name { get; }

    /// <summary>The larger of the forward and the reverse peak with its sign; of two that are equal to 1e-9 the earlier.</summary>
    public static double Torque(TorquePeak forward, TorquePeak reverse) => IsForward(forward, reverse) ? Nm(forward)
        : double.IsPositiveInfinity(Nm(reverse)) ? Nm(reverse)
        : -Nm(reverse);

    /// <summary>When that peak was reached, s.</summary>
    public static double Time(TorquePeak forward, TorquePeak reverse) =>
        (IsForward(forward, reverse) ? forward : reverse).Time.Seconds;

    private static bool IsForward(TorquePeak forward, TorquePeak reverse)
    {
        double most = Nm(forward);
        double least = Nm(reverse);
        bool isSame = Math.Abs(most - least) <= Same * most;
        return double.IsInfinity(most) || (isSame ? forward.Time.Seconds <= reverse.Time.Seconds : most > least);
    }

    private static double Nm(TorquePeak peak) => peak.Own?.NewtonMeters ?? double.PositiveInfinity;
}
