using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Torsion;

/// <summary>Runs a torsional model in time.</summary>
/// <remarks>
/// Between events the motion is exact to rounding, also with damping that is not proportional. Events and peaks are roots
/// of the motion, found within bounds so that none is stepped over; their times are good to about 1e-13 of a step.
/// Crossings shorter than 2⁻⁴⁰ of a step, or higher than a bound by less than 1e-13 of it, may be taken as none.
/// A run always ends: chatter, and the limits on events and steps, become findings.
/// </remarks>
public static class Transient
{
    /// <summary>Runs from a start for a time, in memory of its own.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The duration is zero, negative or not finite.</exception>
    public static TransientResult Run(TorsionStart start, Duration duration) =>
        Run(start, duration, TransientLimits.Usual, new TransientWorkspace());

    /// <summary>Runs from a start for a time. The result is valid until the next run in the same workspace.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The duration is zero, negative or not finite.</exception>
    public static TransientResult Run(TorsionStart start, Duration duration, TransientWorkspace workspace) =>
        Run(start, duration, TransientLimits.Usual, workspace);

    /// <summary>Runs from a start for a time within limits. The result is valid until the next run in the same workspace.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The duration is zero, negative or not finite.</exception>
    public static TransientResult Run(TorsionStart start, Duration duration, TransientLimits limits, TransientWorkspace workspace) =>
        Run(start, duration, limits, workspace, default, false, default, false);

    /// <summary>Runs from a start for a time within limits and also finds the largest torque in each shaft's spring alone.</summary>
    /// <remarks>
    /// Slower than <see cref="Run(TorsionStart, Duration, TransientLimits, TransientWorkspace)"/>; for
    /// <see cref="TransientResult.SpringPeak"/>.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The duration is zero, negative or not finite.</exception>
    internal static TransientResult RunWithSprings(
        TorsionStart start, Duration duration, TransientLimits limits, TransientWorkspace workspace) =>
        Run(start, duration, limits, workspace, default, false, default, true);

    /// <summary>Runs and samples an element's own torque, N·m, at equal times from the start to the end.</summary>
    /// <param name="start">The start.</param>
    /// <param name="duration">Above 0.</param>
    /// <param name="workspace">Memory.</param>
    /// <param name="element">Element to sample.</param>
    /// <param name="newtonMeters">Filled; sample k is at k/(n − 1) of the duration.</param>
    /// <exception cref="ArgumentOutOfRangeException">The duration is zero, negative or not finite.</exception>
    /// <exception cref="ArgumentException">There is no such element.</exception>
    public static TransientResult TraceTorque(
        TorsionStart start, Duration duration, TransientWorkspace workspace, string element, Span<double> newtonMeters) =>
        TraceTorque(start, duration, TransientLimits.Usual, workspace, element, newtonMeters);

    /// <summary>The same within limits, which may hold what stops it.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The duration is zero, negative or not finite.</exception>
    /// <exception cref="ArgumentException">There is no such element.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static TransientResult TraceTorque(
        TorsionStart start, Duration duration, TransientLimits limits, TransientWorkspace workspace, string element,
        Span<double> newtonMeters)
    {
        int link = Guard.NotNull(start, nameof(start)).Model.LinkIndex(element);
        TransientResult result = Run(start, duration, limits, workspace, [link], false, newtonMeters, false);
        Scale(newtonMeters, 1 / start.Model.Mechanism.LinkRatio[link]);
        return result;
    }

    /// <summary>The same of several elements in one run: the samples of the first, then those of the next.</summary>
    internal static TransientResult TraceTorques(
        TorsionStart start, Duration duration, TransientLimits limits, TransientWorkspace workspace, IReadOnlyList<string> elements,
            Span<double> newtonMeters)
    {
        Mechanism m = start.Model.Mechanism;
        int[] traced = [.. elements.Select(start.Model.LinkIndex)];
        TransientResult result = Run(start, duration, limits, workspace, traced, false, newtonMeters, false);
        int samples = newtonMeters.Length / traced.Length;
        for (int n = 0; n < traced.Length; n++)
        {
            Scale(newtonMeters.Slice(n * samples, samples), 1 / m.LinkRatio[traced[n]]);
        }

        return result;
    }

    /// <summary>Runs and samples a rotor's own speed, rad/s, at equal times from the start to the end.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The duration is zero, negative or not finite.</exception>
    /// <exception cref="ArgumentException">There is no such rotor.</exception>
    public static TransientResult TraceSpeed(
        TorsionStart start, Duration duration, TransientWorkspace workspace, string rotor, Span<double> radiansPerSecond) =>
        TraceSpeed(start, duration, TransientLimits.Usual, workspace, rotor, radiansPerSecond);

    /// <summary>The same within limits, which may hold what stops it.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The duration is zero, negative or not finite.</exception>
    /// <exception cref="ArgumentException">There is no such rotor.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static TransientResult TraceSpeed(
        TorsionStart start, Duration duration, TransientLimits limits, TransientWorkspace workspace, string rotor,
        Span<double> radiansPerSecond)
    {
        int i = Guard.NotNull(start, nameof(start)).Model.RotorIndex(rotor);
        TransientResult result = Run(start, duration, limits, workspace, [i], true, radiansPerSecond, false);
        Scale(radiansPerSecond, start.Model.Mechanism.RotorRatio[i]);
        return result;
    }

    private static TransientResult Run(
        TorsionStart start,
        Duration duration,
        TransientLimits limits,
        TransientWorkspace workspace,
        ReadOnlySpan<int> traced,
        bool speed,
        Span<double> trace,
        bool springs)
    {
        Guard.NotNull(start, nameof(start));
        Guard.NotNull(limits, nameof(limits));
        Guard.NotNull(workspace, nameof(workspace));
        double end = Guard.Positive(Si.Seconds(duration), "Duration", "s", nameof(duration));
        Mechanism m = start.Model.Mechanism;
        workspace.FitTo(m);
        start.WriteTo(workspace.State);
        workspace.Log.WatchesSprings = springs;
        trace.Fill(double.NaN);
        TransientLoop.Run(m, workspace, end, limits, new TransientTrace(traced, speed, trace, end));
        TransientResult result = workspace.Result ??= new TransientResult(workspace);
        result.Show(start.Model, end);
        return result;
    }

    private static void Scale(Span<double> values, double factor)
    {
        for (int i = 0; i < values.Length; i++)
        {
            values[i] *= factor;
        }
    }
}
