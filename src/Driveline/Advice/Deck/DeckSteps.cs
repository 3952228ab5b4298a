using Driveline.Provenance;

namespace Driveline.Advice;

/// <summary>The steps of the top-link kernel.</summary>
internal static class DeckSteps
{
    public static readonly CalculationStep AnchorAhead = new(
        "topLinkAnchorAhead", "a", "√(L² − (m cos θ − b)²) − m sin θ", "m", "plane geometry of the three-point hitch");

    public static readonly CalculationStep LinkChange = new(
        "topLinkChange", "ΔL", "√((m sin θ' + a)² + (m cos θ' − b)²) − L", "m", "plane geometry of the three-point hitch");
}
