using System.Diagnostics.CodeAnalysis;
using Driveline.Cases.Members;
using Driveline.Monitoring;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Cases.Questions;

/// <summary>Takes a measured work peak and the history of the log into a case.</summary>
public static class MeasuredWork
{
    private const int LongestNotes = 20_000;

    private static readonly Basis FromCase = Basis.Given("the case");

    /// <summary>
    /// Whether the protection has acted in normal work, as the case tells it; not known when it does not, or tells of a trip.
    /// </summary>
    public static ActedInWork ActedIn(CaseFile file) =>
        Guard.NotNull(file, nameof(file)).Facts.Get(CaseFileMembers.Work)?.Get(WorkMembers.TripsInNormalWork) == false ? ActedInWork.Never
            : ActedInWork.NotKnown;

    /// <summary>The case with the peak in place of the one it states, and a note that tells where it was measured.</summary>
    /// <remarks>A case file states its bands as limits; the note keeps that these ends are those of an interval.</remarks>
    /// <param name="file">The case.</param>
    /// <param name="learned">What was learned at the PTO.</param>
    /// <param name="measured">The case with the peak; null when there is a problem.</param>
    /// <param name="problem">
    /// No peak was learned, or the case states its work torques elsewhere than at the PTO, or contradicts the peak.
    /// </param>
    public static bool TryIn(
        CaseFile file, WorkPeakEstimate learned, [NotNullWhen(true)] out CaseFile? measured, [NotNullWhen(false)] out string? problem)
    {
        CaseObject facts = Guard.NotNull(file, nameof(file)).Facts;
        measured = null;
        if (Guard.NotNull(learned, nameof(learned)).Torque is not { } peak)
        {
            problem = "The log shows no peak of work, so there is nothing to write.";
            return false;
        }

        if (facts.Get(CaseFileMembers.Work)?.Get(WorkMembers.At) is { } place && !CaseWork.IsPto(place))
        {
            problem = "The case states its work torques at '" + place
                + "', the log was measured at the PTO; take work.at out of the case first.";
            return false;
        }

        string note = "work.steadyPeak " + peak.Basis.Weakest.Document + " (ends of an interval of 95 %).";
        string notes = facts.Get(CaseFileMembers.Notes) is { } before ? before + " " + note : note;
        CaseFile noted = notes.Length <= LongestNotes ? file.With("notes", CaseFileMembers.Notes.JsonOf(notes)).Case! : file;
        TorqueBand band = TorqueBand.OfSi(peak.SiBand, BandBasis.Of(FromCase));
        CaseReadResult read = noted.With("work.steadyPeak", WorkMembers.SteadyPeak.JsonOf(band));
        measured = read.Case;
        problem = read.IsRead ? null : "The case cannot take the peak: " + string.Join(" ", read.Errors.Select(e => e.Message));
        return read.IsRead;
    }

    /// <summary>
    /// The case with the peak, and with how often the protection acted over the hours seen, where the log tells it and the case states no
    /// history: trips, and those slips that a clutch is there for. Since when these hours count, and what changed since, nobody measured.
    /// </summary>
    /// <param name="file">The case.</param>
    /// <param name="report">What the log shows.</param>
    /// <param name="measured">The case with what was measured; null when there is a problem.</param>
    /// <param name="problem">Why the case cannot take it.</param>
    public static bool TryIn(
        CaseFile file, MonitorReport report, [NotNullWhen(true)] out CaseFile? measured, [NotNullWhen(false)] out string? problem)
    {
        MonitorHistory history = Guard.NotNull(report, nameof(report)).History;
        if (!TryIn(file, report.WorkPeak, out measured, out problem) || file.Facts.Get(CaseFileMembers.History) is not null
            || history.Trips is not { } trips || history.TripsInWork is not { } tripsInWork || !(history.Turned.Hours > 0))
        {
            return measured is not null;
        }

        bool slips = CaseElements.All(file.Facts.Get(CaseFileMembers.Driveline), ElementMembers.SlipClutch).Any();
        long all = trips + (slips ? history.Slips!.Value : 0);
        long inWork = tripsInWork + (slips ? history.SlipsInWork!.Value : 0);
        CaseReadResult read = measured.With("history", FormattableString.Invariant(
            $"{{ \"hours\": {history.Turned.Hours:R}, \"breaks\": {inWork}, \"breaksAtEngagement\": {all - inWork} }}"));
        measured = read.Case ?? measured;
        return true;
    }
}
