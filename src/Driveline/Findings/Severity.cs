namespace Driveline.Findings;

/// <summary>How much a finding matters, worst first.</summary>
public enum Severity
{
    /// <summary>People or dear parts are at risk.</summary>
    Danger = 0,

    /// <summary>The answer is doubtful or the machine is likely to be damaged in time.</summary>
    Warning = 1,

    /// <summary>Good to know.</summary>
    Note = 2,
}
