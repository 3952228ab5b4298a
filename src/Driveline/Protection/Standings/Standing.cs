namespace Driveline.Protection;

/// <summary>Whether the machine may be used as it is, why, and what lifts each reason. Every answer heads with it. Immutable.</summary>
/// <remarks>
/// Precedence: Stop, NotKnown, WithCare, GoOn. A defect that somebody has seen counts whatever the numbers say. Silence never gives GoOn:
/// that needs a verdict of Protected with what the manual specifies, or of AsSpecified, and somebody who has looked over tube, gearbox
/// and blades.
/// </remarks>
public sealed class Standing
{
    internal Standing(StandingState state, IReadOnlyList<StandingReason> reasons)
    {
        State = state;
        Reasons = reasons;
    }

    /// <summary>The standing in one word.</summary>
    public StandingState State { get; }

    /// <summary>The reasons, most urgent first; empty only when the state is GoOn.</summary>
    public IReadOnlyList<StandingReason> Reasons { get; }

    /// <summary>True when a reason of that code holds.</summary>
    /// <param name="code">A code of <see cref="StandingFindings"/>.</param>
    public bool Has(string code) => Reasons.Any(r => r.Why.Code == code);

    /// <inheritdoc/>
    public override string ToString() => State + (Reasons.Count > 0 ? " (" + string.Join(", ", Reasons) + ")" : string.Empty);
}
