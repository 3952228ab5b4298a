using Driveline.Advice;
using Driveline.Cases.Members;
using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Protection;

namespace Driveline.Cases.Questions;

/// <summary>Answers to the advice's questions about a slip clutch that the case describes.</summary>
internal static class SeenClutchFacts
{
    private const double DaysOfAYear = 366;

    /// <summary>
    /// Every answer that the only clutch of the case gives; none when there are several, for nobody knows which is meant.
    /// </summary>
    public static IEnumerable<Fact?> Of(CaseFile file, ProtectionQuestion? question)
    {
        CaseObject[] stated = [.. CaseElements.All(file.Facts.Get(CaseFileMembers.Driveline), ElementMembers.SlipClutch)];
        SlipClutchDevice[] devices = [.. question?.Chain.Devices.OfType<SlipClutchDevice>() ?? []];
        return stated.Length == 1 && devices.Length == 1
            ? [.. OfTest(stated[0], file.Date), Climate(stated[0].Get(SlipClutchMembers.Climate)), .. OfCondition(devices[0])] : [];
    }

    private static IEnumerable<Fact?> OfTest(CaseObject clutch, DateTime? date)
    {
        if (clutch.Get(SlipClutchMembers.SlipTestResult) == SlipTestOutcome.DidNotSlip)
        {
            yield return OwnerFacts.SlipTest.DoesNotSlip;
        }
        else if (clutch.Get(SlipClutchMembers.SlipTestResult) == SlipTestOutcome.Slipped
            && clutch.Get(SlipClutchMembers.LastSlipTest) is { } test && date is { } today)
        {
            yield return (today - test).TotalDays <= DaysOfAYear ? OwnerFacts.SlipCheck.WithinYear : OwnerFacts.SlipCheck.OverYear;
        }
    }

    private static Fact? Climate(StorageClimate climate) => climate switch
    {
        StorageClimate.Moist => OwnerFacts.Climate.Moist,
        StorageClimate.Dry => OwnerFacts.Climate.Dry,
        _ => null,
    };

    // As the clutch itself is judged.
    private static IEnumerable<Fact?> OfCondition(SlipClutchDevice device)
    {
        bool Has(string code) => device.Findings.Any(f => f.Code == code);
        yield return Has(ClutchFindings.Oiled) ? OwnerFacts.Facings.Oily
            : Has(ClutchFindings.Glazed) ? OwnerFacts.Facings.Glazed
            : Has(ClutchFindings.WornOut) ? OwnerFacts.Facings.Worn
            : null;
        yield return Has(ClutchFindings.SpringsSolid) || Has(ClutchFindings.ShorterThanSolid) ? OwnerFacts.SpringLength.CoilsTouch
            : null;
    }
}
