using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Clutches;

/// <summary>A clutch that slips again and again and cools in between, as one lump.</summary>
/// <remarks>
/// ΔT = E / (m · c), β = h · A / (m · c). Long after the first slip T swings between
/// T_max = T0 + ΔT / (1 - exp(-β · t1)) and T_max - ΔT. Cooling alone: T0 + (T - T0) · exp(-β · t).
/// Each slip is short beside the interval.
/// </remarks>
internal sealed class RepeatedSlips
{
    private readonly double riseK;
    private readonly double perSecond;
    private readonly double ambientK;
    private readonly double intervalS;

    private RepeatedSlips(double riseK, double perSecond, double ambientK, double intervalS)
    {
        this.riseK = riseK;
        this.perSecond = perSecond;
        this.ambientK = ambientK;
        this.intervalS = intervalS;
    }

    /// <summary>Rise by one slip, ΔT.</summary>
    public TemperatureDelta RisePerSlip => TemperatureDelta.FromKelvins(riseK);

    /// <summary>Time in which the excess over the air falls to 37 %, 1/β.</summary>
    public Duration TimeConstant => Duration.FromSeconds(1 / perSecond);

    /// <summary>Highest temperature after many slips.</summary>
    public Temperature Highest => Temperature.FromKelvins(ambientK + (riseK / (1 - Math.Exp(-perSecond * intervalS))));

    /// <summary>Temperature just before a slip after many slips.</summary>
    public Temperature Lowest => Temperature.FromKelvins(ambientK + (riseK / (1 - Math.Exp(-perSecond * intervalS))) - riseK);

    /// <summary>Slips of stated energy into a stated mass.</summary>
    /// <param name="energy">Heat of one slip into the mass; 0 or more.</param>
    /// <param name="mass">Mass that takes it up; above 0.</param>
    /// <param name="material">Its material.</param>
    /// <param name="coefficient">Heat transfer coefficient h to the air; above 0.</param>
    /// <param name="cooledArea">Area the air reaches; above 0.</param>
    /// <param name="ambient">Temperature of the air; -60 to 100 °C.</param>
    /// <param name="interval">Time from slip to slip, t1; above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of its range.</exception>
    public static RepeatedSlips Of(
        Energy energy, Mass mass, ThermalMaterial material, HeatTransferCoefficient coefficient, Area cooledArea, Temperature ambient,
            Duration interval)
    {
        double capacity = Guard.Positive(Si.Kilograms(mass), "Mass", "kg", nameof(mass)) * Guard.NotNull(
            material, nameof(material)).JPerKgK;
        double loss = Guard.Positive(
            Si.WattsPerSquareMeterKelvin(coefficient), "Heat transfer coefficient", "W/(m²·K)", nameof(coefficient))
            * Guard.Positive(Si.SquareMeters(cooledArea), "Cooled area", "m²", nameof(cooledArea));
        return new RepeatedSlips(
            Guard.NotNegative(Si.Joules(energy), "Heat of one slip", "J", nameof(energy)) / capacity,
            loss / capacity,
            Ambient(ambient),
            Interval(interval));
    }

    /// <summary>Slips of a clutch whose heat path has cooling.</summary>
    /// <param name="slip">One slip; it must end.</param>
    /// <param name="path">Where the heat goes, with cooling.</param>
    /// <param name="ambient">Temperature of the air; -60 to 100 °C.</param>
    /// <param name="interval">Time from slip to slip, t1; above 0.</param>
    /// <exception cref="ArgumentException">The slip never ends, or the path has no cooling.</exception>
    public static RepeatedSlips Of(SlipEvent slip, HeatPath path, Temperature ambient, Duration interval)
    {
        if (!Guard.NotNull(slip, nameof(slip)).Ends)
        {
            throw new ArgumentException("A repeated slip must end; this one never does.", nameof(slip));
        }

        if (double.IsNaN(Guard.NotNull(path, nameof(path)).LossWPerK))
        {
            throw new ArgumentException("The heat path must have cooling; give it with WithCooling.", nameof(path));
        }

        return new RepeatedSlips(
            path.PlateShare * slip.EnergyJ / path.CapacityJPerK, path.LossWPerK / path.CapacityJPerK, Ambient(ambient), Interval(interval));
    }

    /// <summary>Highest temperature in the n-th slip, starting from the air's temperature.</summary>
    /// <param name="slips">Number of slips so far; 1 or more.</param>
    public Temperature HighestAfter(int slips)
    {
        Guard.Within(slips, 1, int.MaxValue, "Number of slips", nameof(slips));
        double decay = Math.Exp(-perSecond * intervalS);
        return Temperature.FromKelvins(ambientK + (riseK * (1 - Math.Pow(decay, slips)) / (1 - decay)));
    }

    /// <summary>Time to cool from one temperature to another.</summary>
    /// <param name="from">Temperature at the start; not below <paramref name="to"/>.</param>
    /// <param name="to">Temperature wanted; above the air's.</param>
    /// <exception cref="ArgumentOutOfRangeException">The air never cools it that far, or it starts colder.</exception>
    public Duration CoolDown(Temperature from, Temperature to)
    {
        double low = Si.Kelvins(to);
        if (!(low > ambientK))
        {
            throw Guard.OutOfRange(
                "Temperature wanted", FormattableString.Invariant($"above the air's {ambientK:G6} K"), low, "K", nameof(to));
        }

        double high = Guard.Within(Si.Kelvins(from), low, 3000, "Temperature at the start", "K", nameof(from));
        return Duration.FromSeconds(Math.Log((high - ambientK) / (low - ambientK)) / perSecond);
    }

    private static double Ambient(Temperature ambient) =>
        Guard.Within(Si.Kelvins(ambient), 213.15, 373.15, "Temperature of the air", "K", nameof(ambient));

    private static double Interval(Duration interval) =>
        Guard.Positive(Si.Seconds(interval), "Time from slip to slip", "s", nameof(interval));
}
