using Driveline.Clutches;
using Driveline.Protection;
using UnitsNet;

namespace Driveline.Choosing;

/// <summary>One setting of a clutch with its two margins.</summary>
public sealed class ClutchPoint
{
    private readonly double deflectionM;

    internal ClutchPoint(DiscClutch clutch, double deflectionM, SlipTorque slip, double? workMargin, double? guardMargin)
    {
        Clutch = clutch;
        this.deflectionM = deflectionM;
        Slip = slip;
        WorkMargin = workMargin;
        GuardMargin = guardMargin;
    }

    /// <summary>The clutch so set.</summary>
    public DiscClutch Clutch { get; }

    /// <summary>The torque it is set to: expected, while slipping, at the clutch.</summary>
    public Torque Torque => Torque.FromNewtonMeters(TorqueNm);

    /// <summary>The length of its springs.</summary>
    public Length SpringLength => Length.FromMeters(Clutch.Springs.FreeM - deflectionM);

    /// <summary>Its slip torque so set, running and breakaway, once it has been slipped.</summary>
    public SlipTorque Slip { get; }

    /// <summary>Smallest running torque low over work peak high of any device; null when not known.</summary>
    public double? WorkMargin { get; }

    /// <summary>
    /// Smallest damage torque low over breakaway torque high of any part; 0 when the breakaway is unbounded, null when not known.
    /// </summary>
    public double? GuardMargin { get; }

    internal double TorqueNm => Slip.Running.SiBand.Expected;

    internal double DeflectionM => deflectionM;

    internal bool LeavesRoom(ProtectionPolicy policy) => WorkMargin > policy.MinimumWorkMargin && GuardMargin > policy.MinimumGuardMargin;

    /// <inheritdoc/>
    public override string ToString() =>
        FormattableString.Invariant($"{TorqueNm:G4} N·m at {(Clutch.Springs.FreeM - deflectionM) * 1000:G4} mm");
}
