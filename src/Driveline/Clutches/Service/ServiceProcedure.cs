namespace Driveline.Clutches;

/// <summary>A service procedure of a slip clutch: its steps in order.</summary>
public sealed class ServiceProcedure
{
    private readonly ServiceStep[] steps;

    internal ServiceProcedure(string code, ServiceStep[] steps)
    {
        Code = code;
        this.steps = steps;
    }

    /// <summary>Stable code of the procedure; its text is its title.</summary>
    public string Code { get; }

    /// <summary>The steps in order.</summary>
    public IReadOnlyList<ServiceStep> Steps => steps;

    /// <inheritdoc/>
    public override string ToString() => Code;
}
