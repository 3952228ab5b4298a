using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Fasteners;
using Driveline.Findings;
using Driveline.Quantities;
using Driveline.ShearBolts;

namespace Driveline.Protection;

/// <summary>Whether a fitted device is the one that the manual names.</summary>
internal static class SpecifiedIdentity
{
    // A caliper tells two diameters apart that differ by more.
    private const double SameDiameter = 0.01;

    // Half a millimetre is what a caliper and uneven nuts leave open on a row of springs.
    private const double SameLengthM = 0.5e-3;

    public static void Add(ProtectiveDevice fitted, ProtectiveDevice specified, FittedComparison comparison, List<Finding> speaksFor,
        List<Finding> against, List<Finding> open)
    {
        int before = against.Count;
        bool isNumber = IsSameNumber(fitted, specified);
        if (isNumber)
        {
            speaksFor.Add(Named(SpecifiedFindings.PartNumber, fitted).With("number", fitted.PartNumber!));
        }
        else if (fitted.PartNumber is { } other && specified.PartNumber is { } manuals)
        {
            open.Add(Named(SpecifiedFindings.OtherPartNumber, fitted).With("number", other).With("named", manuals).BarringNothing()
                .WithSettledBy(Measurements.IdentifyDevice));
        }

        if (BoltOf(fitted) is { } own && BoltOf(specified) is { } named)
        {
            OfBolt(own, named, isNumber, speaksFor, against, open);
        }
        else if (isNumber)
        {
            return;
        }
        else if (fitted is StatedDevice { AsIfLaidOut: not null } || specified is StatedDevice { AsIfLaidOut: not null })
        {
            open.Add(Named(SpecifiedFindings.GradeNotKnown, fitted).BarringNothing().WithSettledBy(Measurements.IdentifyDevice));
        }
        else
        {
            OfSetting(fitted, specified, comparison, speaksFor, against, open);
        }

        // A plane that nobody has looked at widens the torque; that is no other bolt.
        bool isPlaneOpen = fitted is ShearBoltDevice { BreakTorque.Joint.Bolt.PlaneThrough: PlaneThrough.NotKnown };
        if (against.Count == before && !isPlaneOpen && comparison is FittedComparison.Stronger or FittedComparison.Weaker)
        {
            against.Add(Named(SpecifiedFindings.OtherTorque, fitted));
        }
    }

    /// <summary>True when it is known whether it is the manual's, though nobody knows its torque.</summary>
    public static bool IsTold(ProtectiveDevice fitted, ProtectiveDevice specified) => IsSameNumber(fitted, specified)
        || (BoltOf(fitted)?.BreakTorque.Joint.Bolt is { Material.IsIdentified: true } && BoltOf(specified) is not null);

    private static bool IsSameNumber(ProtectiveDevice fitted, ProtectiveDevice specified) =>
        fitted.PartNumber is { } own && specified.PartNumber is { } named && Bare(own).Length > 0 && Bare(own) == Bare(named);

    private static bool IsUnmarked(ShearBolt bolt) => ReferenceEquals(bolt.Material, FastenerMaterial.UnmarkedInchBolt)
        || ReferenceEquals(bolt.Material, FastenerMaterial.UnmarkedMetricBolt);

    private static bool HasNoMark(BoltGrade grade, ScrewThread? thread) => thread is not null
        && HeadMarks.Identify(HeadMark.None, thread).Candidates.Any(c => grade.Equals(c.Grade));

    // Spaces, dashes and dots are written or left out as it comes.
    private static string Bare(string number) => new([.. number.Where(char.IsLetterOrDigit).Select(char.ToUpperInvariant)]);

    // A bolt of which only the number is told has no size to compare.
    private static ShearBoltDevice? BoltOf(ProtectiveDevice device) => device as ShearBoltDevice
        ?? (device is StatedDevice { AsIfLaidOut: { BreakTorque.Joint.Bolt: { } bolt } laid } && (bolt.Thread is not null
            || bolt.FittedSpringPin is not null || bolt.Material.IsIdentified) ? laid : null);

    private static void OfBolt(
        ShearBoltDevice fitted, ShearBoltDevice specified, bool isNumber, List<Finding> speaksFor, List<Finding> against,
        List<Finding> open)
    {
        ShearBolt own = fitted.BreakTorque.Joint.Bolt;
        ShearBolt named = specified.BreakTorque.Joint.Bolt;
        bool isSize = IsSameSize(own, named);
        (isSize ? speaksFor : against).Add(Named(isSize ? SpecifiedFindings.Size : SpecifiedFindings.OtherSize, fitted));
        if (own.FittedSpringPin is null)
        {
            AddGrade(fitted, own, named, speaksFor, against, isNumber ? [] : open);
        }

        if (own.PlaneThrough != PlaneThrough.NotKnown)
        {
            bool isPlane = named.PlaneThrough == PlaneThrough.NotKnown || named.PlaneThrough == own.PlaneThrough;
            (isPlane ? speaksFor : against).Add(Named(isPlane ? SpecifiedFindings.Plane : SpecifiedFindings.OtherPlane, fitted));
        }
    }

    private static void AddGrade(
        ShearBoltDevice fitted, ShearBolt own, ShearBolt named, List<Finding> speaksFor, List<Finding> against, List<Finding> open)
    {
        bool isTold = own.Material.IsIdentified && named.Material.IsIdentified;
        if (!isTold || (own.Material.Grade is null) != (named.Material.Grade is null))
        {
            bool isBare = IsUnmarked(own) && named.Material.Grade is { } bare && HasNoMark(bare, own.Thread);
            open.Add(Named(isBare ? SpecifiedFindings.UnmarkedAsNamed : SpecifiedFindings.GradeNotKnown, fitted).BarringNothing()
                .WithSettledBy(Measurements.IdentifyDevice));
            return;
        }

        bool isSame = own.Material.Grade is { } grade ? grade.Equals(named.Material.Grade) : own.Material.Name == named.Material.Name;
        (isSame ? speaksFor : against).Add(Named(isSame ? SpecifiedFindings.Grade : SpecifiedFindings.OtherGrade, fitted));
    }

    private static bool IsSameSize(ShearBolt own, ShearBolt named) => own.FittedSpringPin is not null || named.FittedSpringPin is not null
        ? own.FittedSpringPin?.ToString() == named.FittedSpringPin?.ToString()
        : own.Thread is not null || named.Thread is not null
            ? own.Thread is not null && own.Thread.Equals(named.Thread) && IsSame(Narrowest(own), Narrowest(named))
            : IsSame(Narrowest(own), Narrowest(named));

    private static double Narrowest(ShearBolt bolt) => (bolt.NeckDiameter ?? bolt.Diameter).Meters;

    private static bool IsSame(double own, double named) => Math.Abs(own - named) <= SameDiameter * named;

    // A torque counts when it was measured on this device: a computed one rests on table values of friction.
    private static void OfSetting(ProtectiveDevice fitted, ProtectiveDevice specified, FittedComparison comparison, List<Finding> speaksFor,
        List<Finding> against, List<Finding> open)
    {
        int before = speaksFor.Count + against.Count;
        LengthBand? own = (fitted as SlipClutchDevice)?.SlipTorque.Clutch?.SpringLength;
        if (own is not null && (specified as StatedDevice)?.SpringLength is { } named)
        {
            bool isSame = own.SiBand.Low >= named.SiBand.Low - SameLengthM && own.SiBand.High <= named.SiBand.High + SameLengthM;
            (isSame ? speaksFor : against).Add(
                Named(isSame ? SpecifiedFindings.SpringLength : SpecifiedFindings.OtherSpringLength, fitted)
                    .With("length", QuantityKind.Length, own.SiBand.Expected)
                    .With("named", QuantityKind.Length, named.SiBand.Expected));
        }

        if (fitted is not SlipClutchDevice { SlipTorque.Source: not SlipTorqueSource.Measured } && comparison == FittedComparison.Same)
        {
            speaksFor.Add(Named(SpecifiedFindings.Torque, fitted));
        }

        if (speaksFor.Count + against.Count == before && comparison is FittedComparison.NotKnown or FittedComparison.Same)
        {
            open.Add(Named(SpecifiedFindings.SettingNotKnown, fitted).BarringNothing()
                .WithSettledBy(fitted.Kind == DeviceKind.SlipClutch ? Measurements.ClutchSprings : Measurements.IdentifyDevice));
        }
    }

    private static Finding Named(string code, ProtectiveDevice device) => Finding.Named(code, Severity.Note, device.Name);
}
