using Driveline.Findings;

namespace Driveline.Clutches;

/// <summary>What must hold between the measures told of a coil spring.</summary>
internal static class CoilSpringConflicts
{
    private const double LeastIndex = 2;
    private const double GreatestIndex = 50;

    public static IEnumerable<FactConflict> Of(double? wireM, double? meanM, double? coils, CoilEnds ends, double? solidM, double? freeM)
    {
        if (solidM >= freeM)
        {
            yield return new FactConflict(
                "solidLength", "freeLength",
                "The solid length " + FactConflict.Shown(solidM) + " must be smaller than the free length " + FactConflict.Shown(freeM)
                    + ".");
        }

        if (meanM < LeastIndex * wireM || meanM > GreatestIndex * wireM)
        {
            yield return new FactConflict(
                "meanDiameter", "wire",
                "The mean diameter " + FactConflict.Shown(meanM) + " must be from 2 to 50 times the wire " + FactConflict.Shown(wireM)
                    + ".");
        }

        double? longest = wireM is { } wire && coils is { } wound ? CoilSpringKernel.SolidLengthM(wire, wound, ends) : null;
        if (solidM > longest * 1.001)
        {
            yield return new FactConflict(
                "solidLength", "coils",
                "The solid length " + FactConflict.Shown(solidM) + " is longer than that many coils of that wire can be, "
                    + FactConflict.Shown(longest) + ".");
        }

        if (freeM <= longest)
        {
            yield return new FactConflict(
                "freeLength", "coils",
                "The free length " + FactConflict.Shown(freeM) + " must be above the solid length of that many coils of that wire, "
                    + FactConflict.Shown(longest) + ".");
        }
    }
}
