namespace Driveline.Clutches;

/// <summary>A service procedure of a slip clutch: its steps in order.</summary>
/// <remarks>
/// Printed practices disagree (turns to loosen, seconds to slip, days idle, wear limit, nut step). The machine's own manual
/// decides; a step shows the range of the others.
/// </remarks>
public sealed partial class ServiceProcedure
{
    internal ServiceProcedure(string code, ServiceStep[] steps)
    {
        Code = code;
        Steps = Array.AsReadOnly(steps);
    }

    /// <summary>Stable code of the procedure; its text is its title.</summary>
    public string Code { get; }

    /// <summary>The steps in order.</summary>
    public IReadOnlyList<ServiceStep> Steps { get; }

    /// <inheritdoc/>
    public override string ToString() => Code;
}
