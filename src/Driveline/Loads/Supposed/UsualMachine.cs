using Driveline.Pto;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Loads;

/// <summary>
/// What tells which values are usual for a driveline: kind and width of its machine, power of the tractor, its joints. Immutable.
/// </summary>
internal sealed class UsualMachine
{
    private UsualMachine(MachineKind kind) => Kind = kind;

    private UsualMachine(UsualMachine other)
    {
        Kind = other.Kind;
        WidthM = other.WidthM;
        PtoPowerW = other.PtoPowerW;
        Joint = other.Joint;
    }

    /// <summary>The kind of machine.</summary>
    public MachineKind Kind { get; }

    /// <summary>Working width; null when not known.</summary>
    public Length? Width => WidthM is { } m ? Length.FromMeters(m) : null;

    /// <summary>Power of the tractor at its PTO; null when not known.</summary>
    public Power? PtoPower => PtoPowerW is { } w ? Power.FromWatts(w) : null;

    /// <summary>Series of the joints of the PTO shaft; null when not known.</summary>
    public JointSeries? Joint { get; private init; }

    internal double? WidthM { get; private init; }

    internal double? PtoPowerW { get; private init; }

    /// <summary>A machine of which only the kind is known.</summary>
    public static UsualMachine Of(MachineKind kind) => new(kind);

    /// <summary>The same with its working width.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The width is not above 0.</exception>
    public UsualMachine WithWidth(Length width) =>
        new(this) { WidthM = Guard.Positive(Si.Meters(width), "Width", "m", nameof(width)) };

    /// <summary>The same with the power of the tractor at its PTO.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The power is not above 0.</exception>
    public UsualMachine WithPtoPower(Power power) =>
        new(this) { PtoPowerW = Guard.Positive(Si.Watts(power), "PTO power", "W", nameof(power)) };

    /// <summary>The same with the series of the joints of the PTO shaft.</summary>
    public UsualMachine WithJoint(JointSeries series) => new(this) { Joint = Guard.NotNull(series, nameof(series)) };
}
