using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace Driveline.Quantities;

/// <content>One reading for every type of quantity.</content>
public static partial class QuantityText
{
    private static readonly object[] Types =
    [
        new QuantityType<Torque>(Dimension.Torque, static si => Torque.FromNewtonMeters(si)),
        new QuantityType<Length>(Dimension.Length, static si => Length.FromMeters(si)),
        new QuantityType<RotationalSpeed>(Dimension.RotationalSpeed, static si => RotationalSpeed.FromRadiansPerSecond(si)),
        new QuantityType<Power>(Dimension.Power, static si => Power.FromWatts(si), LargestDecimal),
        new QuantityType<MassMomentOfInertia>(Dimension.Inertia, static si => MassMomentOfInertia.FromKilogramSquareMeters(si)),
        new QuantityType<Pressure>(Dimension.Stress, static si => Pressure.FromPascals(si)),
        new QuantityType<Force>(Dimension.Force, static si => Force.FromNewtons(si)),
        new QuantityType<Angle>(Dimension.Angle, static si => Angle.FromRadians(si)),
        new QuantityType<Mass>(Dimension.Mass, static si => Mass.FromKilograms(si)),
        new QuantityType<Duration>(Dimension.Time, static si => Duration.FromSeconds(si)),
        new QuantityType<Energy>(Dimension.Energy, static si => Energy.FromJoules(si)),
        new QuantityType<Temperature>(Dimension.Temperature, static si => Temperature.FromKelvins(si)),
        new QuantityType<Speed>(Dimension.Speed, static si => Speed.FromMetersPerSecond(si)),
        new QuantityType<RotationalStiffness>(
            Dimension.TorsionalStiffness, static si => RotationalStiffness.FromNewtonMetersPerRadian(si)),
        new QuantityType<ForcePerLength>(Dimension.SpringRate, static si => ForcePerLength.FromNewtonsPerMeter(si)),
        new QuantityType<Area>(Dimension.Area, static si => Area.FromSquareMeters(si)),
        new QuantityType<Frequency>(Dimension.Rate, static si => Frequency.FromHertz(si)),
        new QuantityType<MassFlow>(Dimension.MassFlow, static si => MassFlow.FromKilogramsPerSecond(si)),
        new QuantityType<double>(Dimension.Number, static number => number),
    ];

    // UnitsNet holds power as a decimal, which ends near 7.9e28.
    private const double LargestDecimal = 7e28;

    /// <summary>Reads a quantity of the type asked for, e.g. Parse&lt;Torque&gt;("650 lbf.ft").</summary>
    /// <typeparam name="T">
    /// Torque, Length, RotationalSpeed, Power, MassMomentOfInertia, Pressure, Force, Angle, Mass, Duration, Energy, Temperature, Speed,
    /// RotationalStiffness, ForcePerLength, Area, Frequency or MassFlow of UnitsNet; double for a plain number or a percentage.
    /// </typeparam>
    /// <exception cref="FormatException">The text is no such quantity; the message says why and what is accepted.</exception>
    /// <exception cref="NotSupportedException">The type is none of those named.</exception>
    public static T Parse<T>(string text)
        where T : struct => TryParse(text, out T value, out string? problem) ? value : throw new FormatException(problem);

    /// <summary>Reads a quantity of the type asked for if the text is one.</summary>
    /// <typeparam name="T">One of the types of <see cref="Parse{T}"/>.</typeparam>
    /// <param name="text">What was written, e.g. "650 lbf.ft".</param>
    /// <param name="value">The quantity; the type's default when not read.</param>
    /// <param name="problem">What is wrong and what is accepted; null when read.</param>
    /// <exception cref="NotSupportedException">The type is none of those named.</exception>
    public static bool TryParse<T>(string? text, out T value, [NotNullWhen(false)] out string? problem)
        where T : struct
    {
        QuantityType<T> type = Types.OfType<QuantityType<T>>().SingleOrDefault()
            ?? throw new NotSupportedException("No text is read as " + typeof(T).Name + ".");
        value = default;
        if (!TryParse(text, type.Dimension, out double si, out problem))
        {
            problem ??= string.Empty;
            return false;
        }

        if (Math.Abs(si) >= type.Largest)
        {
            problem = "“" + Clean(text) + "” is not " + WrittenUnits.Words(type.Dimension) + ": its number is too large.";
            return false;
        }

        value = type.OfSi(si);
        return true;
    }

    private sealed class QuantityType<T>
    {
        public QuantityType(Dimension dimension, Func<double, T> ofSi, double largest = double.MaxValue)
        {
            Dimension = dimension;
            OfSi = ofSi;
            Largest = largest;
        }

        public Dimension Dimension { get; }

        public Func<double, T> OfSi { get; }

        public double Largest { get; }
    }
}
