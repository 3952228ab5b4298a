using Driveline.Chains;
using Driveline.Findings;
using Driveline.ShearBolts;

namespace Driveline.Protection;

/// <summary>All findings of a verdict, worst first and each once.</summary>
internal static class VerdictFindings
{
    // A trip band wider than this ratio of high to low is worth a word: grade 2 and 4.6 scatter about 2, grade 5 and 8.8 about 1.5.
    private const double WideScatter = 1.7;

    // A bolt that may tire within a season's work is a cause of breaks; beyond some years nobody needs to be told.
    private const double ShortLifeHours = 100;
    private const double LongLifeHours = 2000;

    public static IReadOnlyList<Finding> Of(ProtectionVerdict verdict)
    {
        var findings = new List<Finding>();
        ProtectionQuestion question = verdict.Question;
        if (verdict.Headline == Headline.NoSettingFits && verdict.WeakestPart is { } weakest)
        {
            findings.Add(Finding.Of(ProtectionFindings.NoSettingFits, Severity.Danger)
                .With("name", weakest.Part.Name)
                .With("damagedExpected", QuantityKind.Torque, weakest.DamagedAtPto!.SiBand.Expected)
                .With("workExpected", QuantityKind.Torque, verdict.WorkPeak!.SiBand.Expected));
        }

        for (int k = 0; k < verdict.Doubts.Count; k++)
        {
            findings.Add(verdict.Doubts[k].Finding);
        }

        foreach (DeviceCheck check in verdict.AllDevices)
        {
            IReadOnlyList<Finding> own = check.Device.Findings;
            for (int k = 0; k < own.Count; k++)
            {
                Finding settled = Experience.Settled(Proud(own[k], question), verdict);
                findings.Add(question.Places.NameDevice(question.Chain, check.Index, settled));
            }

            AddFatigue(check, verdict, findings);
            if (check.Device.Kind is DeviceKind.ShearBolt or DeviceKind.NotKnown && check.Device.Breakaway is { IsBounded: true } trip
                && trip.SiBand.Low > 0 && trip.SiBand.High / trip.SiBand.Low > WideScatter)
            {
                findings.Add(Finding.Of(ProtectionFindings.TripScattersWidely, Severity.Note)
                    .With("name", check.Device.Name)
                    .With("ratio", QuantityKind.Number, trip.SiBand.High / trip.SiBand.Low));
            }
        }

        ActingOrder.Add(verdict, findings);
        TractorFindings.Add(verdict, findings);
        AddFitted(verdict, findings);
        if (question.History is not null)
        {
            findings.AddRange(Experience.Findings(verdict));
        }

        for (int k = 0; k < question.Notes.Count; k++)
        {
            findings.Add(Experience.Settled(question.Notes[k], verdict));
        }

        for (int k = 0; k < findings.Count; k++)
        {
            findings[k] = question.Places.Name(question.Chain, findings[k]);
        }

        return Array.AsReadOnly(WorstFirst(EachOnce.Of(findings)));
    }

    // In the order in which they were found, within one severity.
    private static Finding[] WorstFirst(List<Finding> findings)
    {
        var sorted = new Finding[findings.Count];
        int count = 0;
        for (Severity severity = Severity.Danger; severity <= Severity.Note; severity++)
        {
            for (int k = 0; k < findings.Count; k++)
            {
                if (findings[k].Severity == severity)
                {
                    sorted[count++] = findings[k];
                }
            }
        }

        return sorted;
    }

    // Where people stand beside the turning shaft, a bolt that stands out is what catches them.
    private static Finding Proud(Finding finding, ProtectionQuestion question) =>
        finding.Code == ShearBoltFindings.BoltStandsProud && VerdictCautions.TurnsInTheOpen(question.Machine) ? finding.As(Severity.Danger)
            : finding;

    private static void AddFatigue(DeviceCheck check, ProtectionVerdict verdict, List<Finding> findings)
    {
        if (check.Fatigue is not { } fatigue)
        {
            return;
        }

        for (int k = 0; k < fatigue.Findings.Count; k++)
        {
            findings.Add(Experience.Settled(fatigue.Findings[k].At(check.Device.Place), verdict));
        }

        if (fatigue.Hours is { } hours && hours < LongLifeHours && !check.Device.NeverLetsGo)
        {
            findings.Add(Finding.Of(ProtectionFindings.BoltMayTire, hours < ShortLifeHours ? Severity.Warning : Severity.Note)
                .With("name", check.Device.Name)
                .With("hours", QuantityKind.Number, hours));
        }
    }

    // Another grade or size than the manual's is a change of the machine, also where the two make up for each other.
    private static void AddHigherOrThicker(FittedAgainstSpecified comparison, List<Finding> findings)
    {
        if (comparison.Answer != FittedComparison.Stronger
            && NamedBolt.Of(comparison.Device) is { } own && NamedBolt.Of(comparison.Specified) is { } named
            && NamedBolt.IsHigherOrThicker(own, named))
        {
            findings.Add(Finding.Of(ProtectionFindings.FittedHigherOrThicker, Severity.Warning)
                .With("name", comparison.Device!.Name)
                .With("fitted", NamedBolt.Words(own))
                .With("specified", NamedBolt.Words(named)));
        }
    }

    private static void AddFitted(ProtectionVerdict verdict, List<Finding> findings)
    {
        for (int k = 0; k < verdict.Comparisons.Count; k++)
        {
            FittedAgainstSpecified comparison = verdict.Comparisons[k];
            if (comparison.Answer is FittedComparison.Stronger or FittedComparison.Weaker)
            {
                bool isStronger = comparison.Answer == FittedComparison.Stronger;
                findings.Add(Finding.Of(isStronger ? ProtectionFindings.FittedStronger : ProtectionFindings.FittedWeaker,
                    isStronger ? Severity.Danger : Severity.Warning).With("name", comparison.Device!.Name));
            }

            AddHigherOrThicker(comparison, findings);
            if (comparison.Specified is null)
            {
                findings.Add(Finding.Of(ProtectionFindings.SpecifiedNotKnown, Severity.Note).BarringNothing()
                    .With("name", comparison.Device!.Name));
            }
        }
    }
}
