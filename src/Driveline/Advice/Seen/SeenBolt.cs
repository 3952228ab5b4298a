using Driveline.Chains;
using Driveline.Fasteners;
using Driveline.Quantities;
using Driveline.ShearBolts;

namespace Driveline.Advice;

/// <summary>Answers to the questions of an advice that a fitted bolt gives, so that nobody is asked twice.</summary>
internal static class SeenBolt
{
    // Diameters that differ by less are one size with its tolerance; strengths that differ by less are one grade from two standards.
    private const double SizeTolerance = 0.02;
    private const double GradeTolerance = 0.1;

    private const double DaysOfAMonth = 31;
    private const double DaysOfAYear = 366;

    /// <summary>Expected tensile strength below which a manual's grade is a low one, which bolts without marks usually are.</summary>
    private const double LowGradePa = 700e6;

    /// <summary>What is seen of the joint: hub, shear plane, holes, and when the bolt last sheared.</summary>
    public static IReadOnlyList<Fact> Of(FittedBolt bolt)
    {
        Guard.NotNull(bolt, nameof(bolt));
        Fact?[] seen = [Hub(bolt.Hub), Plane(bolt.Stated.PlaneThrough), Holes(bolt), LastTrip(bolt)];
        return [.. seen.OfType<Fact>()];
    }

    /// <summary>How the fitted bolt compares with the manual's in grade and size.</summary>
    public static IReadOnlyList<Fact> AgainstManual(ShearBolt fitted, ShearBolt manual)
    {
        Guard.NotNull(fitted, nameof(fitted));
        Guard.NotNull(manual, nameof(manual));
        Fact?[] seen = [Grade(fitted.Material, manual.Material), Size(Narrowest(fitted) / Narrowest(manual))];
        return [.. seen.OfType<Fact>()];
    }

    private static Fact? Hub(HubState hub) => hub switch
    {
        HubState.Free => OwnerFacts.HubTurns.Freely,
        HubState.Stiff => OwnerFacts.HubTurns.Stiffly,
        HubState.Seized => OwnerFacts.HubTurns.NotAtAll,
        _ => null,
    };

    private static Fact? Plane(PlaneThrough plane) => plane switch
    {
        PlaneThrough.Shank => OwnerFacts.PlaneThrough.Shank,
        PlaneThrough.Thread => OwnerFacts.PlaneThrough.Thread,
        _ => null,
    };

    private static Fact? Holes(FittedBolt bolt) => bolt.StandOff is { Meters: > 0 } ? OwnerFacts.Holes.StandApart
        : bolt.HoleFit == HoleFit.Worn ? OwnerFacts.Holes.Oval
        : bolt.HoleFit == HoleFit.Tight ? OwnerFacts.Holes.Round
        : null;

    private static Fact? LastTrip(FittedBolt bolt)
    {
        if (bolt.LastTrip is not { } trip || bolt.Day is not { } day)
        {
            return null;
        }

        double days = (day - trip).TotalDays;
        return days <= DaysOfAMonth ? OwnerFacts.LastTrip.ThisMonth
            : days <= DaysOfAYear ? OwnerFacts.LastTrip.ThisYear
            : OwnerFacts.LastTrip.LongerAgo;
    }

    private static Fact Size(double ratio) => ratio < 1 - SizeTolerance ? OwnerFacts.BoltSize.Smaller
        : ratio > 1 + SizeTolerance ? OwnerFacts.BoltSize.Larger
        : OwnerFacts.BoltSize.AsManual;

    private static Fact? Grade(FastenerMaterial fitted, FastenerMaterial manual)
    {
        if (fitted.Tensile is not { HasExpected: true } seen || manual.Tensile is not { HasExpected: true } wanted || !manual.IsIdentified)
        {
            return null;
        }

        if (!fitted.IsIdentified)
        {
            bool isUnmarked = fitted.Equals(FastenerMaterial.UnmarkedInchBolt) || fitted.Equals(FastenerMaterial.UnmarkedMetricBolt);
            return !isUnmarked ? null
                : GradeFacts.Compare(BoltMark.NoMark, wanted.SiBand.Expected < LowGradePa ? BoltMark.Low : BoltMark.Medium);
        }

        double ratio = seen.SiBand.Expected / wanted.SiBand.Expected;
        return ratio < 1 - GradeTolerance ? OwnerFacts.GradeAgainstManual.Softer
            : ratio > 1 + GradeTolerance ? OwnerFacts.GradeAgainstManual.Stronger
            : OwnerFacts.GradeAgainstManual.Same;
    }

    private static double Narrowest(ShearBolt bolt) => (bolt.NeckDiameter ?? bolt.Diameter).Meters;
}
