using Driveline.Findings;

namespace Driveline.Advice;

/// <summary>
/// One thing to inspect after a strike. Its code has three texts: what to look and listen for, and, under ".stop", when not to run on.
/// </summary>
public sealed class InspectionItem
{
    internal InspectionItem(string code, bool isReachedThroughDriveline, Finding? load)
    {
        Code = code;
        IsReachedThroughDriveline = isReachedThroughDriveline;
        Load = load;
    }

    /// <summary>Stable code, e.g. "inspect.driveTube".</summary>
    public string Code { get; }

    /// <summary>Code of the text that says when not to run on.</summary>
    public string StopCode => Code + ".stop";

    /// <summary>True when the blow reaches it through the driveline, so that a device could have spared it.</summary>
    public bool IsReachedThroughDriveline { get; }

    /// <summary>What is known of the load on it, with numbers; null when only the inspection can tell.</summary>
    public Finding? Load { get; }

    /// <inheritdoc/>
    public override string ToString() => Code;
}
