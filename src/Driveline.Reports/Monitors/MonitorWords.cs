using Driveline.Findings;
using Driveline.Monitoring;
using Driveline.Protection;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Monitors;

/// <summary>The content of the report of a log. The cautions always come last.</summary>
internal static class MonitorWords
{
    private const int MostEvents = 20;

    public static IReadOnlyList<ReportBlock> Of(MonitorReport report, ReportOptions options)
    {
        var phrase = new Phrase(options.Texts, options.Units);
        var blocks = new List<ReportBlock>();
        string what = phrase.Of("watch.title");
        blocks.Add(ReportBlock.Title(options.Title is { } title ? CleanText.Title(title) : what));
        if (options.Title is not null)
        {
            blocks.Add(ReportBlock.Heading(what));
        }

        blocks.Add(ReportBlock.Lead(Lead(report.History, phrase)));
        blocks.Add(ReportBlock.Heading(phrase.Of("watch.workPeak")));
        blocks.Add(ReportBlock.Paragraph(WorkPeak(report.WorkPeak, phrase)));
        blocks.Add(ReportBlock.Heading(phrase.Of("watch.events")));
        blocks.Add(ReportBlock.Bullets(Events(report, phrase)));
        blocks.Add(ReportBlock.Heading(phrase.Of("watch.heat")));
        blocks.Add(ReportBlock.Bullets(Heat(report, phrase)));
        blocks.Add(ReportBlock.Heading(phrase.Of("watch.life")));
        blocks.Add(report.Lives.Count > 0
            ? ReportBlock.Bullets(report.Lives.Select(life => Life(life, phrase)))
            : ReportBlock.Paragraph(phrase.Of("watch.life.none")));
        blocks.Add(ReportBlock.Heading(phrase.Of("watch.samples")));
        blocks.Add(ReportBlock.Bullets(Samples(report, phrase)));
        blocks.Add(ReportBlock.Heading(phrase.Of("report.findings")));
        blocks.Add(report.Findings.Count > 0
            ? ReportBlock.Bullets(report.Findings.Select(f => phrase.Of("severity." + f.Severity) + ": " + phrase.Of(f)))
            : ReportBlock.Paragraph(phrase.Of("report.findings.none")));
        blocks.Add(ReportBlock.Heading(phrase.Of("report.cautions")));
        blocks.Add(ReportBlock.Bullets(MonitorCautions.Always.Select(c => phrase.Of(c.Code))));
        return blocks;
    }

    private static string Lead(MonitorHistory history, Phrase phrase) =>
        phrase.Of(Phrase.Code(history.Trips is null ? "watch.lead.oneSpeed" : "watch.lead")
        .With("hours", QuantityKind.Number, history.Turned.Hours)
        .With("overloads", QuantityKind.Count, history.Overloads)
        .With("trips", QuantityKind.Count, history.Trips ?? 0)
        .With("slips", QuantityKind.Count, history.Slips ?? 0)
        .With("engagements", QuantityKind.Count, history.Engagements));

    private static string WorkPeak(WorkPeakEstimate learned, Phrase phrase) => learned.Torque is null
        ? learned.AtMost is { } most
            ? phrase.Of(Phrase.Code("watch.workPeak.atMost").With("most", QuantityKind.Torque, most.NewtonMeters))
            : phrase.Of("watch.workPeak.notKnown")
        : phrase.Of(Phrase.Code("watch.workPeak.learned")
            .With("band", BandWords.Of(learned.Torque, phrase))
            .With("asked", QuantityKind.Number, learned.Horizon.Hours)
            .With("peaks", QuantityKind.Count, learned.Peaks)
            .With("level", QuantityKind.Torque, learned.Level.NewtonMeters)
            .With("seen", QuantityKind.Number, learned.Worked.Hours));

    private static IEnumerable<string> Events(MonitorReport report, Phrase phrase)
    {
        foreach (MonitorEvent seen in report.Events.Take(MostEvents))
        {
            string words = phrase.Of(Phrase.Code(double.IsNaN(seen.DurationS) ? "watch.event.newClock" : "watch.event." + seen.Kind)
                .With("start", phrase.Number(seen.StartS, "F2"))
                .With("duration", Value(seen.DurationS, QuantityKind.Time, phrase))
                .With("peak", Value(seen.PeakNm, QuantityKind.Torque, phrase))
                .With("angle", Value(seen.SlipAngleRad, QuantityKind.Angle, phrase))
                .With("energy", Value(seen.EnergyJ, QuantityKind.Energy, phrase))
                .With("face", Value(seen.PeakFaceK, QuantityKind.Temperature, phrase)));
            yield return seen.IsCut ? words + " " + phrase.Of("watch.event.cut") : words;
        }

        long more = report.Events.Count - Math.Min(MostEvents, report.Events.Count) + report.EventsLeftOut;
        if (more > 0)
        {
            yield return phrase.Of(Phrase.Code("watch.events.more").With("count", QuantityKind.Count, more));
        }
        else if (report.Events.Count == 0)
        {
            yield return phrase.Of("watch.events.none");
        }
    }

    private static IEnumerable<string> Heat(MonitorReport report, Phrase phrase)
    {
        MonitorHistory history = report.History;
        if (history.SlipEnergy is not { } energy)
        {
            yield return phrase.Of("watch.heat.notKnown");
            yield break;
        }

        yield return phrase.Of(Phrase.Code("watch.heat.total")
            .With("angle", QuantityKind.Angle, history.SlipAngle!.Value.Radians)
            .With("time", QuantityKind.Time, history.SlipTime!.Value.Seconds)
            .With("energy", QuantityKind.Energy, energy.Joules));
        yield return history.HighestFaceTemperature is { } highest
            ? phrase.Of(Phrase.Code("watch.heat.face")
                .With("highest", QuantityKind.Temperature, highest.Kelvins)
                .With("now", QuantityKind.Temperature, history.FaceTemperature!.Value.Kelvins))
            : phrase.Of("watch.heat.faceNotKnown");
        if (report.SlipTorque is { } trend)
        {
            yield return phrase.Of(Phrase.Code("watch.heat.trend")
                .With("now", QuantityKind.Torque, trend.Now.NewtonMeters)
                .With("slips", QuantityKind.Count, trend.Slips)
                .With("change", QuantityKind.Torque, trend.NewtonMetersPerHour)
                .With("low", QuantityKind.Torque, trend.LowNewtonMetersPerHour)
                .With("high", QuantityKind.Torque, trend.HighNewtonMetersPerHour));
        }
    }

    private static string Life(ConsumedLife life, Phrase phrase) =>
        phrase.Of(Phrase.Code(life.Damage.High is null ? "watch.life.atLeast" : "watch.life.between")
        .With("part", phrase.Capital(life.Detail.Name))
        .With("low", QuantityKind.Number, 100 * life.Damage.Low)
        .With("high", QuantityKind.Number, 100 * (life.Damage.High ?? double.PositiveInfinity)));

    private static IEnumerable<string> Samples(MonitorReport report, Phrase phrase)
    {
        SampleCounts counts = report.Counts;
        yield return phrase.Of(Phrase.Code("watch.samples.counts")
            .With("taken", QuantityKind.Count, counts.Taken)
            .With("late", QuantityKind.Count, counts.Late)
            .With("duplicate", QuantityKind.Count, counts.Duplicate)
            .With("notANumber", QuantityKind.Count, counts.NotANumber)
            .With("outOfRange", QuantityKind.Count, counts.OutOfRange)
            .With("missing", QuantityKind.Count, counts.Missing)
            .With("gaps", QuantityKind.Count, counts.Gaps)
            .With("bad", QuantityKind.Count, report.BadRows));
        foreach (string row in Rows(report, phrase))
        {
            yield return row;
        }
    }

    /// <summary>What is wrong with the first rows that were left out.</summary>
    public static IEnumerable<string> Rows(MonitorReport report, Phrase phrase) => report.FirstBadRows.Select(row =>
        phrase.Of(Phrase.Code("watch.row." + row.Trouble)
            .With("line", QuantityKind.Count, row.Line)
            .With("column", row.Column ?? string.Empty)));

    private static string Value(double si, QuantityKind kind, Phrase phrase) => double.IsNaN(si) ? phrase.Of("band.notKnown")
        : phrase.Quantity(si, kind);
}
