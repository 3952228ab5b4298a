using Driveline.Findings;
using UnitsNet;

namespace Driveline.Clutches;

/// <summary>What must hold between the measures told of a disc spring: the limits of <see cref="DiscSpring"/>, one by one.</summary>
internal static class DiscSpringConflicts
{
    /// <summary>A spring of a standard series must be held at that diameter.</summary>
    public static IEnumerable<FactConflict> OfSeries(string? series, Length? outer)
    {
        if (series is { Length: > 0 } && outer is { } diameter && !Din2093.TryFind(series[0], diameter, out _))
        {
            yield return new FactConflict("outerDiameter", "series", Din2093.NotHeldText(series[0]));
        }
    }

    public static IEnumerable<FactConflict> Of(double? outerM, double? innerM, double? thicknessM, double? reducedM, double? heightM)
    {
        if (innerM >= outerM)
        {
            yield return new FactConflict(
                "innerDiameter", "outerDiameter",
                "The inner diameter of the disc " + FactConflict.Shown(innerM) + " must be smaller than the outer diameter "
                    + FactConflict.Shown(outerM) + ".");
        }

        if (thicknessM >= heightM)
        {
            yield return new FactConflict(
                "thickness", "freeHeight",
                "The thickness of the disc " + FactConflict.Shown(thicknessM) + " must be smaller than the free height "
                    + FactConflict.Shown(heightM) + ".");
        }

        double? wall = (outerM - innerM) / 2;
        if (wall > 0 && thicknessM > wall)
        {
            yield return new FactConflict(
                "thickness", "outerDiameter",
                "The thickness " + FactConflict.Shown(thicknessM) + " must be at most the width of the ring, " + FactConflict.Shown(wall)
                    + ".");
        }

        if (heightM > 4 * thicknessM)
        {
            yield return new FactConflict(
                "freeHeight", "thickness",
                "The free height " + FactConflict.Shown(heightM) + " must be at most four times the thickness, "
                    + FactConflict.Shown(4 * thicknessM) + ".");
        }

        if (reducedM < 0.9 * thicknessM || reducedM > thicknessM)
        {
            yield return new FactConflict(
                "reducedThickness", "thickness",
                "The reduced thickness " + FactConflict.Shown(reducedM) + " must be from 0.9 times the thickness to all of it, "
                    + FactConflict.Shown(thicknessM) + ".");
        }
    }
}
