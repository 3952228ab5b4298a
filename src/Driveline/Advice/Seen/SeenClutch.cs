using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Quantities;

namespace Driveline.Advice;

/// <summary>Answers to the questions of an advice that a fitted clutch gives, so that nobody is asked twice.</summary>
internal static class SeenClutch
{
    private const double DaysOfAYear = 366;

    /// <summary>What is seen of the clutch: its last slip test, its storage, its faces and its springs.</summary>
    /// <param name="device">
    /// The clutch in its place; one without <see cref="SlipClutchDevice.Fitted"/> tells of faces and springs only.
    /// </param>
    public static IReadOnlyList<Fact> Of(SlipClutchDevice device)
    {
        FittedClutch? fitted = Guard.NotNull(device, nameof(device)).Fitted;
        Fact? test = fitted is null ? null : Test(fitted);
        Fact?[] seen = [test, Climate(fitted?.Climate ?? StorageClimate.NotKnown), Faces(device), Springs(device)];
        return [.. seen.OfType<Fact>()];
    }

    private static Fact? Test(FittedClutch clutch) => clutch.IsStuck ? OwnerFacts.SlipTest.DoesNotSlip
        : clutch.LastSlipTest is not { Outcome: SlipTestOutcome.Slipped } test || clutch.Day is not { } day ? null
        : (day - test.Date).TotalDays <= DaysOfAYear ? OwnerFacts.SlipCheck.WithinYear
        : OwnerFacts.SlipCheck.OverYear;

    private static Fact? Climate(StorageClimate climate) => climate switch
    {
        StorageClimate.Moist => OwnerFacts.Climate.Moist,
        StorageClimate.Dry => OwnerFacts.Climate.Dry,
        _ => null,
    };

    // As the clutch itself is judged.
    private static Fact? Faces(SlipClutchDevice device) => Has(device, ClutchFindings.Oiled) ? OwnerFacts.Facings.Oily
        : Has(device, ClutchFindings.Glazed) ? OwnerFacts.Facings.Glazed
        : Has(device, ClutchFindings.WornOut) ? OwnerFacts.Facings.Worn
        : null;

    private static Fact? Springs(SlipClutchDevice device) =>
        Has(device, ClutchFindings.SpringsSolid) || Has(device, ClutchFindings.ShorterThanSolid) ? OwnerFacts.SpringLength.CoilsTouch
            : null;

    private static bool Has(SlipClutchDevice device, string code) => device.Findings.Any(f => f.Code == code);
}
