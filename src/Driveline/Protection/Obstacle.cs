using Driveline.Findings;

namespace Driveline.Protection;

/// <summary>One reason why a question has no Yes, with the measurement that would remove it.</summary>
internal readonly struct Obstacle
{
    public Obstacle(Finding finding, bool onGuards, bool onQuiet, bool leavesUnknown, double width, string? measurement, string? subject)
    {
        Finding = finding;
        OnGuards = onGuards;
        OnQuiet = onQuiet;
        LeavesUnknown = leavesUnknown;
        Width = width;
        Measurement = measurement;
        Subject = subject;
    }

    public Finding Finding { get; }

    public bool OnGuards { get; }

    public bool OnQuiet { get; }

    /// <summary>True when the question cannot be answered at all without it.</summary>
    public bool LeavesUnknown { get; }

    /// <summary>For overlapping bands: ln(high/low) of the band that the measurement would narrow; +∞ when unbounded.</summary>
    public double Width { get; }

    public string? Measurement { get; }

    public string? Subject { get; }
}
