using Driveline.Reports.Pictures;

namespace Driveline.Reports.Ladders;

/// <summary>The ink of each kind of row.</summary>
internal static class LadderInks
{
    public static SvgInk Of(LadderRowKind kind) => kind switch
    {
        LadderRowKind.Work => SvgInk.Work,
        LadderRowKind.Engagement => SvgInk.Engagement,
        LadderRowKind.Device => SvgInk.Device,
        LadderRowKind.Part => SvgInk.Part,
        LadderRowKind.Room => SvgInk.Room,
        _ => SvgInk.Overlap,
    };
}
