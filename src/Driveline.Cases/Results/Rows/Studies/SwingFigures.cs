namespace Driveline.Cases.Results;

/// <summary>How far an output swings between the lowest and the highest tenth of a factor.</summary>
internal sealed class SwingFigures
{
    public string Output { get; set; } = string.Empty;

    public string Factor { get; set; } = string.Empty;

    public double? AtLow { get; set; }

    public double? AtHigh { get; set; }
}
