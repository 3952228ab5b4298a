using Driveline.Findings;

namespace Driveline.Choosing;

/// <summary>A bolt of the stock that does not stand in the ranking, and why.</summary>
public sealed class LeftOut
{
    internal LeftOut(StockItem item, Finding reason)
    {
        Item = item;
        Reason = reason;
    }

    /// <summary>The bolt as it stands in the stock list.</summary>
    public StockItem Item { get; }

    /// <summary>Why it was left out: one of the codes <c>choosing.leftOut.…</c> of <see cref="ChoosingFindings"/>.</summary>
    public Finding Reason { get; }

    /// <inheritdoc/>
    public override string ToString() => Item.Name + ": " + Reason.Code;
}
