using Driveline.Chains;

namespace Driveline.Cases.Results;

/// <summary>The choice of a bolt and of clutch settings.</summary>
internal static class ChoiceRows
{
    public static readonly ShapeOf<ChosenInCase> Shape = new ShapeOf<ChosenInCase>(
            "choose", "The bolts that may take the place of the fitted one, and the settings of slip clutches.")
        .MaybeText("device", c => c.Bolts.Place?.Name, "Name of the shear bolt's device; null when none is known.")
        .MaybeText("fitted", c => NameOf(c.Bolts.Place), "The bolt that is fitted.")
        .MaybeText("specified", c => NameOf(c.Bolts.Specified), "The bolt that the manual specifies.")
        .MaybeText("best", c => c.Bolts.Best?.Item.Name, "The best: it leaves room and is no stronger than specified; null: none.")
        .MaybeFlag("isManualsInStock", c => c.Bolts.IsManualsInStock, "True when the stock has the manual's bolt.")
        .Maybe("manuals", c => c.Bolts.Manuals, ChosenBoltRows.Shape, "The manual's bolt, in stock or not.")
        .List("choices", c => c.Bolts.Choices, ChosenBoltRows.Shape, "The bolts offered, best first.")
        .List("leftOut", c => c.Bolts.LeftOut, LeftOutRows.Shape, "The bolts of the stock that are not offered.")
        .List("settings", c => c.Settings, SettingRows.Shape, "The settings of every slip clutch, in order from the tractor.")
        .List("findings", c => c.Bolts.Findings, FindingRows.Shape, "Everything to notice, worst first.")
        .List("cautions", c => c.Bolts.Cautions, CautionRows.Shape, "Cautions; show them all.");

    private static string? NameOf(ProtectiveDevice? device) =>
        device is ShearBoltDevice { BreakTorque.Joint.Bolt: { } bolt } ? bolt.ToString() : device?.Name;
}
