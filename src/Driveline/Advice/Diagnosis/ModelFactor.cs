using Driveline.Findings;

namespace Driveline.Advice;

/// <summary>One number of the model with what it does to the chances of some causes.</summary>
internal sealed class ModelFactor
{
    public ModelFactor(Finding finding, double factor, params Cause[] causes)
    {
        Finding = finding;
        Factor = factor;
        Causes = causes;
    }

    public Finding Finding { get; }

    public double Factor { get; }

    public Cause[] Causes { get; }

    public double On(Cause cause) => Array.IndexOf(Causes, cause) >= 0 ? Factor : 1;
}
