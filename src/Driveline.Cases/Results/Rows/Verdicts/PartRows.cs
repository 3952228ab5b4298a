using Driveline.Protection;

namespace Driveline.Cases.Results;

/// <summary>A part of the driveline, as the verdict sees it.</summary>
internal static class PartRows
{
    public static readonly ShapeOf<PartCheck> Weakest = new ShapeOf<PartCheck>("weakestPart", "The part that is damaged first.")
        .Text("name", p => p.Part.Name, "Name.")
        .Band("damagedAtNm", p => p.DamagedAtPto, "Torque at the PTO that damages it.");

    public static readonly ShapeOf<InVerdict<PartCheck>> Shape = new ShapeOf<InVerdict<PartCheck>>("part", "A part of the driveline.")
        .Text("name", p => p.Check.Part.Name, "Name.")
        .Choice("kind", p => p.Check.Part.Kind, "What it is.")
        .Choice("guards", p => p.Check.Guards, "Does the protection act before it is damaged?")
        .Band("damagedAtNm", p => p.Check.DamagedAtPto, "Torque at the PTO that damages it.")
        .Band("actsAtNm", p => p.AtPto(p.Check.Part, p.Check.ActsAt), "Torque at the PTO at which a device acts for it.")
        .Margin("margin", p => p.Check.Margin, "Lowest torque that damages it over the highest at which a device acts for it.")
        .MaybeText("guardedBy", p => p.Check.GuardedBy?.Name, "Name of the device that guards it; null when none does.")
        .Choice("side", p => p.Check.Side, "On which side of its device it lies.")
        .MaybeText("inertiaBetween", p => p.Check.InertiaBetween?.Name, "A rotor between it and its device; null when there is none.")
        .MaybeChoice("limitKind", p => p.Check.Part.Limit?.Kind, "How its limit is known.");
}
