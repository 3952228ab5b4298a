using Driveline.Findings;

namespace Driveline.Protection;

/// <summary>One reason for a standing, and what lifts it.</summary>
public sealed class StandingReason
{
    internal StandingReason(Finding why) => Why = why;

    /// <summary>What was found.</summary>
    public Finding Why { get; }

    /// <summary>Code of the text that says what lifts it, e.g. "standing.hubSeized.lift".</summary>
    public string LiftCode => Why.Code + ".lift";

    /// <inheritdoc/>
    public override string ToString() => Why.Code;
}
