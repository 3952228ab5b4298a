using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Torsion;

/// <summary>
/// A curve of torque over travel of something that gives way: a stump, soil, a root. Straight pieces that never get steeper.
/// </summary>
/// <remarks>
/// The curve runs from (0, 0) through its points; behind the last one the torque stays. With the slopes s₁ ≥ s₂ ≥ … ≥ sₙ ≥ 0 of its
/// pieces and sₙ₊₁ = 0 it is the sum of elements i of stiffness kᵢ = sᵢ − sᵢ₊₁ that yield at kᵢ·θᵢ (elastic and perfectly plastic
/// elements in parallel). Each unloads along its own kᵢ and stays deformed, so the whole unloads along s₁ first and dissipates what lies
/// between the curve and its return. A curve that gets steeper (a rope drawn taut) is not such a sum and is refused.
/// </remarks>
internal sealed class YieldCurve
{
    private readonly List<Obstacle> elements = [];

    private YieldCurve(Duration at, double[] angles, double[] torques)
    {
        Angles = angles;
        Torques = torques;
        for (int i = 0; i < angles.Length; i++)
        {
            double stiffness = Slope(i) - (i + 1 < angles.Length ? Slope(i + 1) : 0);
            if (stiffness > 0)
            {
                elements.Add(
                    Obstacle.Yielding(
                    at, RotationalStiffness.FromNewtonMetersPerRadian(stiffness), Torque.FromNewtonMeters(stiffness * angles[i])));
            }
        }
    }

    /// <summary>The obstacles that make up the curve, side by side on one rotor.</summary>
    public IReadOnlyList<Obstacle> Elements => elements;

    private double[] Angles { get; }

    private double[] Torques { get; }

    /// <summary>A curve through points.</summary>
    /// <param name="at">Time of contact; 0 s or more. Travel counts from there.</param>
    /// <param name="travel">Travel of the rotor at each point; above 0, rising.</param>
    /// <param name="torque">Torque on the rotor at each point; above 0, never falling.</param>
    /// <exception cref="ArgumentException">The lists differ in length or are empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A value is outside its range, travel does not rise, torque falls, or a piece is steeper than the one before.
    /// </exception>
    public static YieldCurve Of(Duration at, IReadOnlyList<Angle> travel, IReadOnlyList<Torque> torque)
    {
        Guard.NotNegative(Si.Seconds(at), "Time of the obstacle", "s", nameof(at));
        double[] angles = [.. Guard.NotNull(travel, nameof(travel))
            .Select(a => Guard.Positive(Si.Radians(a), "Travel of a yield curve", "rad", nameof(travel)))];
        double[] torques = [.. Guard.NotNull(torque, nameof(torque))
            .Select(t => Guard.Positive(Si.NewtonMeters(t), "Torque of a yield curve", "N·m", nameof(torque)))];
        if (angles.Length == 0 || angles.Length != torques.Length)
        {
            throw new ArgumentException(
                "A yield curve needs as many torques as travels, at least one; received " + FormattableString.Invariant(
                $"{angles.Length} travels and {torques.Length} torques."), nameof(torque));
        }

        for (int i = 1; i < angles.Length; i++)
        {
            if (angles[i] <= angles[i - 1])
            {
                throw Guard.OutOfRange("Travel of a yield curve",
                    FormattableString.Invariant($"above the {angles[i - 1]} rad of the point before"), angles[i], "rad", nameof(travel));
            }

            double steepest = i == 1 ? torques[0] / angles[0] : (torques[i - 1] - torques[i - 2]) / (angles[i - 1] - angles[i - 2]);
            double most = torques[i - 1] + (steepest * (angles[i] - angles[i - 1]));
            if (torques[i] < torques[i - 1] || torques[i] > most)
            {
                throw Guard.OutOfRange(
                    "Torque of a yield curve",
                    FormattableString.Invariant($"from {torques[i - 1]} to {most} N·m, so that the curve neither falls nor gets steeper"),
                    torques[i], "N·m", nameof(torque));
            }
        }

        return new YieldCurve(at, angles, torques);
    }

    /// <summary>Torque at a travel on first loading.</summary>
    /// <param name="travel">Travel; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The travel is negative or not finite.</exception>
    public Torque TorqueAt(Angle travel)
    {
        double angle = Guard.NotNegative(Si.Radians(travel), "Travel", "rad", nameof(travel));
        int i = 0;
        while (i < Angles.Length && angle > Angles[i])
        {
            i++;
        }

        return Torque.FromNewtonMeters(i == Angles.Length ? Torques[i - 1] : Torques[i] - (Slope(i) * (Angles[i] - angle)));
    }

    private double Slope(int i) => i == 0 ? Torques[0] / Angles[0] : (Torques[i] - Torques[i - 1]) / (Angles[i] - Angles[i - 1]);
}
