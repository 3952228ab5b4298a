namespace Driveline.Cases.Results;

/// <summary>Elementary effects of a factor on an output.</summary>
internal sealed class EffectFigures
{
    public string Output { get; set; } = string.Empty;

    public string Factor { get; set; } = string.Empty;

    public double? Mu { get; set; }

    public double? MuStar { get; set; }

    public double? Sigma { get; set; }
}
