using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Loads;

/// <summary>Inertia of a rotor: the sum of its bodies, at its own speed and as the PTO feels it.</summary>
/// <remarks>
/// J = Σ n · J_body. Behind a speed ratio i = rotor speed / PTO speed the PTO feels J_pto = J · i² (speed-up above 1 makes a
/// rotor feel heavier). Energy E = ½ J ω² is the same at the rotor and at the PTO. Immutable.
/// </remarks>
internal sealed class RotorInertia
{
    private readonly Band full;
    private readonly Band shock;
    private readonly BandBasis basis;

    private RotorInertia(Band full, Band shock, BandBasis basis, bool hasSwinging)
    {
        this.full = full;
        this.shock = shock;
        this.basis = basis;
        HasSwingingBlades = hasSwinging;
    }

    /// <summary>Inertia at the rotor's own speed, swinging blades flung out.</summary>
    public InertiaBand Inertia => InertiaBand.OfSi(full, basis);

    /// <summary>Inertia felt in the first moment of a shock, swinging blades giving way: see <see cref="RotatingBody.Shock"/>.</summary>
    public InertiaBand ShockInertia => InertiaBand.OfSi(shock, basis);

    /// <summary>True when a part of the inertia is in blades free to swing.</summary>
    public bool HasSwingingBlades { get; }

    /// <summary>A rotor of one body.</summary>
    public static RotorInertia Of(RotatingBody body) => Of(1, body);

    /// <summary>A rotor of some equal bodies.</summary>
    /// <param name="count">How many; 1 to 1000.</param>
    /// <param name="body">One of them.</param>
    /// <exception cref="ArgumentOutOfRangeException">The count is not within 1 to 1000.</exception>
    public static RotorInertia Of(int count, RotatingBody body)
    {
        int n = Guard.Within(count, 1, 1000, "Number of bodies", nameof(count));
        Guard.NotNull(body, nameof(body));
        return new RotorInertia(
            body.Inertia.SiBand.Times(n), body.Shock.SiBand.Times(n), BandBasis.Combine(body.Inertia.Basis, body.Shock.Basis),
                body.IsSwinging);
    }

    /// <summary>A rotor of stated inertia at its own speed.</summary>
    public static RotorInertia Stated(InertiaBand inertia) => Of(RotatingBody.Stated(inertia));

    /// <summary>The inertia that explains a logged speed dip of known energy: J = 2 E / (ω₀² − ω₁²).</summary>
    /// <param name="energy">Energy taken by the cut; above 0.</param>
    /// <param name="before">Speed ω₀ before.</param>
    /// <param name="after">Speed ω₁ after; 0 or more and below ω₀.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of its range or not finite.</exception>
    public static MassMomentOfInertia FromDip(Energy energy, RotationalSpeed before, RotationalSpeed after)
    {
        double joules = Guard.Positive(Si.Joules(energy), "Energy", "J", nameof(energy));
        NoSteps none = default;
        return MassMomentOfInertia.FromKilogramSquareMeters(joules / Dip(1, before, after, ref none));
    }

    /// <summary>The same rotor with one more body.</summary>
    public RotorInertia And(RotatingBody body) => And(1, body);

    /// <summary>The same rotor with some more equal bodies.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The count is not within 1 to 1000.</exception>
    public RotorInertia And(int count, RotatingBody body)
    {
        RotorInertia more = Of(count, body);
        return new RotorInertia(
            full + more.full, shock + more.shock, BandBasis.Combine(basis, more.basis), HasSwingingBlades || more.HasSwingingBlades);
    }

    /// <summary>Inertia as the PTO feels it: J_pto = J · i².</summary>
    /// <param name="ratio">i = rotor speed / PTO speed; 0.01 to 100, speed up above 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is out of its range.</exception>
    /// <example>1 kg·m² behind 1:1.47: 2.161 kg·m²; behind 1:1.93: 3.725 kg·m².</example>
    public InertiaBand AtPto(double ratio) => Referred(full, ratio);

    /// <summary>The shock inertia as the PTO feels it: J_pto = J · i².</summary>
    /// <param name="ratio">i = rotor speed / PTO speed; 0.01 to 100, speed up above 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is out of its range.</exception>
    public InertiaBand ShockAtPto(double ratio) => Referred(shock, ratio);

    /// <summary>Energy stored at a speed of the rotor: E = ½ J ω².</summary>
    /// <exception cref="ArgumentOutOfRangeException">The speed is negative or not finite.</exception>
    public EnergyBand EnergyAt(RotationalSpeed rotorSpeed)
    {
        double omega = Guard.NotNegative(Si.RadiansPerSecond(rotorSpeed), "Rotor speed", "rad/s", nameof(rotorSpeed));
        NoSteps none = default;
        return EnergyBand.OfSi(full.Times(RotorKernel.Joules(1, omega, ref none)), basis.With(Basis.Given("speed as stated")));
    }

    /// <summary>Energy given up between two logged speeds: E = ½ J (ω₀² − ω₁²).</summary>
    /// <remarks>Form of the cutting-energy measurement by speed drop: Banno and Ogawa 1979, abstract.</remarks>
    /// <param name="before">Speed ω₀ before.</param>
    /// <param name="after">Speed ω₁ after; 0 or more and below ω₀.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of its range or not finite.</exception>
    public EnergyBand EnergyOfDip(RotationalSpeed before, RotationalSpeed after)
    {
        NoSteps none = default;
        return EnergyBand.OfSi(full.Times(Dip(1, before, after, ref none)), basis.With(Basis.Given("speeds as logged")));
    }

    private static double Dip<S>(double kgM2, RotationalSpeed before, RotationalSpeed after, ref S log)
        where S : struct, ISteps
    {
        double w0 = Guard.Positive(Si.RadiansPerSecond(before), "Speed before", "rad/s", nameof(before));
        double w1 = Guard.NotNegative(Si.RadiansPerSecond(after), "Speed after", "rad/s", nameof(after));
        return w1 < w0
            ? RotorKernel.DipJoules(kgM2, w0, w1, ref log)
            : throw Guard.OutOfRange(
                "Speed after", FormattableString.Invariant($"below the speed before, {w0:G6} rad/s"), w1, "rad/s", nameof(after));
    }

    private InertiaBand Referred(Band kgM2, double ratio)
    {
        double i = Guard.Within(ratio, 0.01, 100, "Speed ratio", string.Empty, nameof(ratio));
        NoSteps none = default;
        return InertiaBand.OfSi(kgM2.Times(RotorKernel.AtPtoKgM2(1, i, ref none)), basis.With(Basis.Given("speed ratio as stated")));
    }
}
