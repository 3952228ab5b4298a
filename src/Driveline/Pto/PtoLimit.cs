using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Pto;

/// <summary>One power limit for a PTO type, as one edition or one tractor manual gives it.</summary>
/// <remarks>Sources disagree; every row is kept and none is averaged. The torque at the limit is T = P / ω.</remarks>
internal sealed class PtoLimit
{
    internal PtoLimit(int type, PtoLimitKind kind, double kilowatts, double speedPerMinute, bool conflicts, Basis basis)
    {
        Type = type;
        Kind = kind;
        PrintedPower = new Sourced(kilowatts, "kW", basis);
        SpeedPerMinute = speedPerMinute;
        Conflicts = conflicts;
    }

    /// <summary>Number of the PTO type, 1 to 4.</summary>
    public int Type { get; }

    /// <summary>Who sets it.</summary>
    public PtoLimitKind Kind { get; }

    /// <summary>The limit in kW as printed or remembered, with its basis.</summary>
    public Sourced PrintedPower { get; }

    /// <summary>The limit.</summary>
    public Power Power => Power.FromKilowatts(PrintedPower.Value);

    /// <summary>The speed for which it holds.</summary>
    public RotationalSpeed Speed => RotationalSpeed.FromRevolutionsPerMinute(SpeedPerMinute);

    /// <summary>Torque at that power and speed, T = P / ω, in N·m.</summary>
    /// <example>60 kW at 540 min⁻¹: 1061 N·m.</example>
    public Torque TorqueAtLimit
    {
        get
        {
            NoSteps none = default;
            return Torque.FromNewtonMeters(PtoTorque.NewtonMeters(PowerW, SpeedPerMinute * Si.Rpm, ref none));
        }
    }

    /// <summary>True when other sources give another value for the same type and speed.</summary>
    public bool Conflicts { get; }

    /// <summary>Where it comes from.</summary>
    public Basis Basis => PrintedPower.Basis;

    internal double SpeedPerMinute { get; }

    internal double PowerW => PrintedPower.Value * 1000;

    /// <inheritdoc/>
    public override string ToString() =>
        FormattableString.Invariant($"type {Type}: {PrintedPower.Value} kW at {SpeedPerMinute} min⁻¹ ({Basis})");
}
