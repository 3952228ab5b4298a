using Driveline.Loads;
using Driveline.Pto;
using Driveline.Quantities;
using static Driveline.Tests.Provenance.DataPage;
using static Driveline.Tests.Provenance.DataRow;

namespace Driveline.Tests.Provenance;

/// <summary>The tractor's side, and what machines need.</summary>
internal static class MachinePages
{
    public static DataPage OfPto() => DataPage.Of(
            "The tractor's PTO", "Stubs, power limits, joints and speeds. Sources disagree on limits; all are kept and none is averaged.")
        .Table(
            "Stubs", "The torque is that of a stub whose steel is not known.",
            "type | diameter, mm | splines | speed, 1/min | root circle, mm | torque, N·m: low / expected / high",
            PtoType.All.Select(t => DataRow.Of(
                [
                    ("type", t.GeometryBasis), ("root circle", t.RootDiameter.WeakestBasis),
                    ("torque", StubStrength.Of(t).Torque.WeakestBasis),
                ],
                Number(t.Number), Number(t.NominalDiameterMm), Number(t.SplineCount), Number(t.SpeedPerMinute), Band(t.RootDiameter, 1e-3),
                Band(StubStrength.Of(t).Torque, 1))))
        .Table(
            "Power limits", string.Empty, "type | set by | power, kW | speed, 1/min",
            PtoType.All.SelectMany(t => t.Limits).Select(l => DataRow.Of(
                l.Basis, Number(l.Type), l.Kind.ToString(), Number(l.PrintedPower.Value), Number(l.SpeedPerMinute))))
        .Table(
            "Joints", "Rated for long life; no torque at which a joint breaks.",
            "series | cap, mm | length of cross, mm | rated at 540/min, N·m | at 1000/min, N·m",
            JointSeries.All.Select(s => DataRow.Of(
                JointSeries.Basis, Number(s.Number), Number(Si.Meters(s.CapDiameter) * 1e3), Number(Si.Meters(s.CrossLength) * 1e3),
                Number(Si.NewtonMeters(s.RatedAt540)), Number(Si.NewtonMeters(s.RatedAt1000)))))
        .Table(
            "Angles of joints", string.Empty, "joint | work | greatest angle",
            JointAngleLimit.All.Select(a => DataRow.Of(
                a.Printed.Basis, a.IsWideAngle ? "wide angle" : "standard", a.IsContinuous ? "continuous" : "short", Printed(a.Printed))))
        .Table(
            "PTO power over engine power", string.Empty, "ratio", PtoPowerRatios.All.Select(r => DataRow.Of(r.Basis, Printed(r))))
        .Table(
            "Engine speed over PTO speed", string.Empty, "ratio", EngineSpeedRatio.All.Select(r => DataRow.Of(r.Basis, Number(r.Ratio))));

    public static DataPage OfMachines() => DataPage.Of(
            "What machines need",
            "Power of work, peaks over the mean, and the usual values that stand in for what nobody stated. A default nobody stated gives "
                + "neither a Yes nor a No.")
        .Table(
            "Power by width and feed", "P = a + b · w + c · F, ± r %.", "machine | a, kW | b, kW/m | c, kW·h/t | r",
            ImplementPower.All.Where(r => r.HasParameters).Select(r => DataRow.Of(
                r.Basis, r.ToString(), Number(r.ConstantKilowatts), Number(r.KilowattsPerMeter), Number(r.KilowattHoursPerTonne),
                Number(r.RangePercent))))
        .Table(
            "Printed powers", string.Empty, "machine | meaning | power, kW | width, m",
            ImplementPower.All.Where(r => !r.HasParameters).Select(r => DataRow.Of(
                r.Basis, r.ToString(), r.Meaning.ToString(), Band(r.Printed, 1e3),
                r.WidthM > 0 ? Number(r.WidthM) + (r.IsPerWidth ? " (for each)" : string.Empty) : string.Empty)))
        .Table(
            "Peaks of work over their mean", "Low / expected / high.", "machine | factor",
            Enum.GetValues<MachineKind>().Select(k => DataRow.Of(PeakFactor.For(k).Basis, k.ToString(), Band(PeakFactor.For(k), 1))))
        .Table(
            "Measured torque of work", string.Empty, "mean, N·m | standard deviation, N·m",
            LoadSpectra.All.Select(s => DataRow.Of(s.Basis, Number(Si.NewtonMeters(s.Mean)), Number(Si.NewtonMeters(s.StandardDeviation)))))
        .Table("Usual values", "At 540/min, of a machine of that width; low / expected / high.", "of | value | unit", Usual());

    private static IEnumerable<DataRow> Usual()
    {
        foreach ((MachineKind kind, double width) in new[]
        {
            (MachineKind.RotaryCutter, 1.2), (MachineKind.RotaryCutter, 1.5), (MachineKind.RotaryCutter, 1.8),
            (MachineKind.RotaryCutter, 2.1),
            (MachineKind.FlailMower, 1.0), (MachineKind.RotaryTiller, 1.0), (MachineKind.SmallSquareBaler, 1.0),
        })
        {
            UsualMachine machine = UsualMachine.Of(kind).WithWidth(UnitsNet.Length.FromMeters(width));
            string name = FormattableString.Invariant($"{kind}, {width} m");
            yield return Row("rotor of a " + name, UsualInertia.OfRotor(machine)!, "kg·m²");
            if (UsualDrive.Ratio(machine, 540 * Si.Rpm) is { } ratio)
            {
                yield return Row("gearbox of a " + name, ratio, "1");
            }
        }

        yield return Row("PTO shaft", UsualInertia.OfPtoShaft(), "kg·m²");
        yield return Row("gears of a gearbox", UsualInertia.OfGearbox(), "kg·m²");
        foreach (JointSeries joint in JointSeries.All)
        {
            yield return Row(
                FormattableString.Invariant($"PTO shaft of series {joint.Number}"), UsualStiffness.OfPtoShaft(joint), "N·m/rad");
        }

        yield return Row("PTO shaft, series not known", UsualStiffness.OfPtoShaft(null), "N·m/rad");
        yield return Row("short shaft behind a gearbox", UsualStiffness.OfInnerShaft(), "N·m/rad");
        yield return Row("overrun clutch", UsualStiffness.OfOverrunClutch(), "N·m/rad");
        yield return Row("engagement by a gentle driver", UsualDrive.Rise(true), "s");
        yield return Row("engagement by another", UsualDrive.Rise(false), "s");
    }

    private static DataRow Row(string of, QuantityBand band, string unit) => DataRow.Of(band.Basis, of, Band(band, 1), unit);
}
