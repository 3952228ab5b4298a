using Driveline.Findings;

namespace Driveline.Clutches;

/// <summary>What must hold between the measures told of the rubbing faces: the limits of <see cref="DiscClutch"/>.</summary>
internal static class FaceConflicts
{
    public static IEnumerable<FactConflict> Of(double? outerM, double? innerM)
    {
        if (innerM >= outerM)
        {
            yield return new FactConflict(
                "innerDiameter", "outerDiameter",
                "The inner diameter of the faces " + FactConflict.Shown(innerM) + " must be smaller than the outer diameter "
                    + FactConflict.Shown(outerM) + ".");
        }
    }
}
