using Driveline.Findings;

namespace Driveline.Protection;

/// <summary>
/// A device that the manual names and of which none is in the list: left out of the list, or replaced by nobody knows what.
/// </summary>
internal static class NotListed
{
    public static Finding Bolt(string because) => Of(SpecifiedFindings.BoltNotListed, because);

    public static Finding Clutch(string because) => Of(SpecifiedFindings.ClutchNotListed, because);

    public static bool Is(Finding finding) => finding.Code is SpecifiedFindings.BoltNotListed or SpecifiedFindings.ClutchNotListed;

    private static Finding Of(string code, string because) => Finding.Of(code, Severity.Warning).Barring(Bars.Both)
        .WithSettledBy(Measurements.PartsList).WithBecause(because);
}
