using Driveline.Monitoring;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Cases.Questions;

/// <summary>Takes a measured work peak into a case.</summary>
public static class MeasuredWork
{
    private const int LongestNotes = 20_000;

    private static readonly Basis FromCase = Basis.Given("the case");

    /// <summary>The case with the peak in place of the one it states, and a note that tells where it was measured.</summary>
    /// <remarks>A case file states its bands as limits; the note keeps that these ends are those of an interval.</remarks>
    /// <param name="file">The case.</param>
    /// <param name="learned">What was learned at the PTO.</param>
    /// <param name="measured">The case with the peak; null when there is a problem.</param>
    /// <param name="problem">No peak was learned, or the case states its work torques elsewhere than at the PTO.</param>
    public static bool TryIn(CaseFile file, WorkPeakEstimate learned, out CaseFile? measured, out string? problem)
    {
        WorkFacts work = Guard.NotNull(file, nameof(file)).Work ?? WorkFacts.Empty;
        measured = null;
        if (Guard.NotNull(learned, nameof(learned)).Torque is not { } peak)
        {
            problem = "The log shows no peak of work, so there is nothing to write.";
            return false;
        }

        if (work.At is { } place && !string.Equals(place, "pto", StringComparison.OrdinalIgnoreCase))
        {
            problem = "The case states its work torques at '" + place
                + "', the log was measured at the PTO; take work.at out of the case first.";
            return false;
        }

        problem = null;
        string note = "work.steadyPeak " + peak.Basis.Weakest.Document + " (ends of an interval of 95 %).";
        string notes = string.IsNullOrEmpty(file.Notes) ? note : file.Notes + " " + note;
        measured = file
            .WithNotes(notes.Length <= LongestNotes ? notes : file.Notes)
            .WithWork(work.WithSteadyPeak(TorqueBand.OfSi(peak.SiBand, BandBasis.Of(FromCase))));
        return true;
    }
}
