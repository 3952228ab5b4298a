using Driveline.Advice;

namespace Driveline.Cases.Results;

/// <summary>How the deck hangs.</summary>
internal static class DeckRows
{
    public static readonly ShapeOf<DeckReading> Shape = new ShapeOf<DeckReading>("deck", "How the deck hangs.")
        .Number("pitchDegrees", d => d.Attitude.Pitch.Degrees, "Pitch, degrees; above 0 when the front is low.")
        .Number("frontBelowRearMm", d => d.Attitude.FrontBelowRear.Millimeters, "Front below rear, mm.")
        .Number("lowestTipMm", d => d.Attitude.LowestTip.Millimeters, "Height of the lowest blade tip, mm.")
        .Choice("reachesGround", d => d.ReachesGround, "Do the blades reach the ground?")
        .Number("topLinkChangeMm", d => d.TopLinkChange?.Millimeters, "By how much to change the top link, mm.")
        .Number("tailWheelDropMm", d => d.TailWheelDrop?.Millimeters, "By how much to lower the tail wheel, mm.")
        .List("findings", d => d.Findings, FindingRows.Shape, "Everything to notice, worst first.");
}
