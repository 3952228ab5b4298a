namespace Driveline.Choosing;

/// <summary>Codes of the cautions that stand beside a single choice. No renderer may drop one.</summary>
public static class ChoosingCautions
{
    /// <summary>
    /// Stronger than the manual specifies, or nobody knows that it is not: only what the manual names, unless its maker agrees.
    /// </summary>
    public const string OnlyTheManual = "caution.onlyTheManual";

    /// <summary>A computed spring setting: only what the manual names, unless its maker agrees.</summary>
    public const string OnlyTheManualsSetting = "caution.onlyTheManualsSetting";

    /// <summary>It needs another hole than the one that is there.</summary>
    public const string RedrillOnlyWithMaker = "caution.redrillOnlyWithMaker";

    /// <summary>Its hole is wider than the normal one for its size.</summary>
    public const string LooseInHole = "caution.looseInHole";

    /// <summary>A strong specimen may outlast a weak part, or nobody knows that it does not.</summary>
    public const string MayNotProtect = "caution.mayNotProtect";

    /// <summary>A weak specimen may act in normal work, or nobody knows that it does not.</summary>
    public const string MayActInWork = "caution.mayActInWork";
}
