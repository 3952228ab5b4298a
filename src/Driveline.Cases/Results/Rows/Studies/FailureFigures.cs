namespace Driveline.Cases.Results;

/// <summary>Why rows failed.</summary>
internal sealed class FailureFigures
{
    public string Reason { get; set; } = string.Empty;

    public long Rows { get; set; }

    public long FirstRow { get; set; }
}
