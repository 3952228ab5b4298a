namespace Driveline.Protection;

/// <summary>The cautions that go with every verdict; no renderer may drop them.</summary>
internal static class VerdictCautions
{
    public static readonly IReadOnlyList<string> Always =
    [
        "caution.stopAndKeyOut",
        "caution.guardsOn",
        "caution.manualDecides",
        "caution.strongerIsAChange",
        "caution.licensedPractice",
    ];
}
