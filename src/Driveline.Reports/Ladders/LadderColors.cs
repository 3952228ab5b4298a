using Driveline.Reports.Documents;
using OxyPlot;

namespace Driveline.Reports.Ladders;

/// <summary>
/// The colours of the picture: told apart by lightness as well as hue, so that colour-blind eyes and grey prints can read it.
/// </summary>
internal static class LadderColors
{
    public static readonly OxyColor Ink = OxyColor.FromRgb(0x1C, 0x1C, 0x22);
    public static readonly OxyColor Faint = OxyColor.FromRgb(0x5A, 0x5A, 0x66);
    public static readonly OxyColor Grid = OxyColor.FromRgb(0xE1, 0xE1, 0xE7);
    public static readonly OxyColor Paper = OxyColor.FromRgb(0xFF, 0xFF, 0xFF);
    public static readonly OxyColor RoomColumn = OxyColor.FromRgb(0xE4, 0xF3, 0xEC);
    public static readonly OxyColor OverlapColumn = OxyColor.FromRgb(0xFB, 0xE3, 0xE0);

    public static OxyColor Of(LeadTone tone) => tone switch
    {
        LeadTone.Good => Of(LadderRowKind.Room),
        LeadTone.Bad => Of(LadderRowKind.Overlap),
        LeadTone.Careful => OxyColor.FromRgb(0xB3, 0x59, 0x00),
        _ => Faint,
    };

    public static OxyColor Of(LadderRowKind kind) => kind switch
    {
        LadderRowKind.Work => OxyColor.FromRgb(0x2F, 0x6F, 0xB5),
        LadderRowKind.Engagement => OxyColor.FromRgb(0x8C, 0xBC, 0xE6),
        LadderRowKind.Device => OxyColor.FromRgb(0xE6, 0x9A, 0x1A),
        LadderRowKind.Part => OxyColor.FromRgb(0x4A, 0x3B, 0x5C),
        LadderRowKind.Room => OxyColor.FromRgb(0x1E, 0x8A, 0x62),
        _ => OxyColor.FromRgb(0xB3, 0x26, 0x1E),
    };
}
