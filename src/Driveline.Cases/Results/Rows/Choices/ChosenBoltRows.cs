using Driveline.Choosing;
using Driveline.Quantities;

namespace Driveline.Cases.Results;

/// <summary>A bolt in the place of the fitted one.</summary>
internal static class ChosenBoltRows
{
    public static readonly ShapeOf<RankedBolt> Shape = new ShapeOf<RankedBolt>(
            "chosenBolt", "A bolt in the place of the fitted one; shown, not recommended: its cautions belong to it.")
        .Text("name", b => b.Item.Name, "It in words: thread and grade, or a pin with its diameter and material.")
        .Text("thread", b => b.Item.Bolt.SizeName, "Its thread; of a pin or rod its diameter, as pin 8 mm.")
        .Text("grade", b => b.Item.Bolt.MaterialName, "Its grade; of a pin or rod its material.")
        .Band("tripTorqueNm", b => b.Trip, "Torque at the PTO at which it breaks.")
        .Margin("workMargin", b => b.WorkMargin, "Its lowest torque over the highest of normal work.")
        .Margin("guardMargin", b => b.GuardMargin, "Lowest torque that damages a part over the highest at which a device acts for it.")
        .Number("tripsPerHour", b => b.TripsPerHour, "Breaks by work peaks an hour of work.")
        .Probability("passProbability", b => b.PassProbability,
            "Chance, at least, that one work peak leaves it whole and an overload breaks it before any part is damaged;")
        .MaybeFlag("isStrongerThanFitted", b => b.IsStrongerThanFitted, "True when it breaks later than the fitted one.")
        .MaybeFlag("isStrongerThanSpecified", b => b.IsStrongerThanSpecified, "True when it breaks later than the specified one.")
        .Flag("isFitted", b => b.IsFitted, "True when it is the fitted one.")
        .Flag("isSpecified", b => b.IsSpecified, "True when it is the specified one.")
        .Flag("isLoose", b => b.IsLoose, "True when its hole is wider than normal for its size.")
        .Flag("leavesRoom", b => b.LeavesRoom, "True when both margins leave room and no answer is No.")
        .Choice("guards", b => b.Verdict.Guards, "Would the protection act before a part is damaged?")
        .Choice("quiet", b => b.Verdict.Quiet, "Would it stay quiet in normal work?")
        .Probability("onePeakTripsProbability", b => b.OnePeakTrips, "Chance that one work peak trips a device;")
        .Probability("damagedFirstProbability", b => b.DamagedFirst, "Chance that an overload damages a part before anything trips;")
        .Number("fatigueHoursAtLeast", b => b.FatigueHours,
            "Hours of work that it lasts at least under repeated peaks; \"unbounded\" when they do not tire it.")
        .Number("holeMm", b => Si.Meters(b.HoleDiameter) * 1000, "Diameter of its hole, mm.")
        .Flag("needsRedrilling", b => b.NeedsRedrilling, "True when the hole must be drilled.")
        .Number("price", b => b.Item.Price, "Its price in the stock list, in the list's own currency; null when it has none.")
        .MaybeText("currency", b => b.Item.Currency, "The currency of the price; null when not stated.")
        .MaybeText("sku", b => b.Item.Sku, "Its number in the stock; null when it has none.")
        .List("gradeSteps", b => b.GradeSteps, GradeStepRows.Shape, "The next grades in the same hole.")
        .List("cautions", b => b.Cautions, CautionRows.Shape, "Cautions that belong to this bolt; show them all.");
}
