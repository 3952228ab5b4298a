using Driveline.Findings;

namespace Driveline.Protection;

/// <summary>One finding that bars a Yes of a verdict, and how much settling it would tell.</summary>
/// <remarks>A class, because lists and queries over structs are compiled anew in each process: a tenth of the start of "assess".</remarks>
internal sealed class Doubt
{
    public Doubt(Finding finding, string? subject)
        : this(finding, subject, false, 0)
    {
    }

    public Doubt(Finding finding, string? subject, bool leavesUnknown, double width)
        : this(finding, subject, leavesUnknown, width, false)
    {
    }

    private Doubt(Finding finding, string? subject, bool leavesUnknown, double width, bool isAsSpecified)
    {
        IsAsSpecified = isAsSpecified;
        Finding = finding;
        Subject = subject;
        LeavesUnknown = leavesUnknown;
        Width = width;
    }

    public Finding Finding { get; }

    /// <summary>True when it stands in the way of "as the maker specified".</summary>
    public bool IsAsSpecified { get; }

    /// <summary>What the measurement is about; null when it is the whole machine.</summary>
    public string? Subject { get; }

    /// <summary>True when the question cannot be answered at all without it.</summary>
    public bool LeavesUnknown { get; }

    /// <summary>For overlapping bands: ln(high/low) of the band that the measurement would narrow; +∞ when unbounded.</summary>
    public double Width { get; }

    public Doubt With(Finding finding) =>
        ReferenceEquals(finding, Finding) ? this : new Doubt(finding, Subject, LeavesUnknown, Width, IsAsSpecified);

    public bool OnGuards => Finding.IsBarring(Bars.Guards);

    public bool OnQuiet => Finding.IsBarring(Bars.Quiet);

    /// <summary>What stands in the way of "as the maker specified".</summary>
    public static Doubt OfSpecified(Finding finding, string? subject) => new(finding, subject, false, 0, true);
}
