using Driveline.Choosing;

namespace Driveline.Cases.Results;

/// <summary>A bolt of the stock that is not offered.</summary>
internal static class LeftOutRows
{
    public static readonly ShapeOf<LeftOut> Shape = new ShapeOf<LeftOut>("leftOut", "A bolt of the stock that is not offered.")
        .Text("name", b => b.Item.Name, "It in words: thread and grade, or a pin with its diameter and material.")
        .Text("thread", b => b.Item.Bolt.SizeName, "Its thread; of a pin or rod its diameter, as pin 8 mm.")
        .Text("grade", b => b.Item.Bolt.MaterialName, "Its grade; of a pin or rod its material.")
        .MaybeText("sku", b => b.Item.Sku, "Its number in the stock; null when it has none.")
        .Text("code", b => b.Reason.Code, "Why, as a stable code.")
        .Words("text", (b, texts, units) => texts.Of(b.Reason, units), "Why, in words.");
}
