using UnitsNet;

namespace Driveline.Torsion;

/// <summary>The largest torque an element carried in one direction, and when.</summary>
public readonly struct TorquePeak : IEquatable<TorquePeak>
{
    private readonly double nm;
    private readonly double ratio;
    private readonly double seconds;

    internal TorquePeak(double referredNm, double ratio, double seconds)
    {
        nm = referredNm;
        this.ratio = ratio;
        this.seconds = seconds;
    }

    /// <summary>The torque at the element's own speed; null when unbounded: a rigid obstacle struck at speed.</summary>
    public Torque? Own => double.IsPositiveInfinity(nm) ? null : Torque.FromNewtonMeters(nm / ratio);

    /// <summary>The torque referred to the first rotor's speed; null when unbounded.</summary>
    public Torque? Referred => double.IsPositiveInfinity(nm) ? null : Torque.FromNewtonMeters(nm);

    /// <summary>When it was reached, since the start of the run; 0 s when there was no torque.</summary>
    public Duration Time => Duration.FromSeconds(seconds);

    /// <summary>True when both are the same.</summary>
    public static bool operator ==(TorquePeak left, TorquePeak right) => left.Equals(right);

    /// <summary>True when they differ.</summary>
    public static bool operator !=(TorquePeak left, TorquePeak right) => !left.Equals(right);

    /// <inheritdoc/>
    public bool Equals(TorquePeak other) => nm.Equals(other.nm) && ratio.Equals(other.ratio) && seconds.Equals(other.seconds);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is TorquePeak other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => (nm.GetHashCode() * 397) ^ seconds.GetHashCode();

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{nm / ratio:G9} N·m at {seconds:G9} s");
}
