using Driveline.Findings;
using Driveline.Provenance;

namespace Driveline.Choosing;

/// <summary>The cautions that stand beside a single choice. No renderer may drop one.</summary>
internal static class ChoosingCautions
{
    private static readonly Basis Manual = Basis.CommonPractice("the machine's maker names the bolt and the setting");
    private static readonly Basis Maker = Basis.CommonPractice("another hole is a change of the machine");
    private static readonly Basis Hole = Basis.CommonPractice("a bolt loose in its hole bends and wears it");
    private static readonly Basis Verdict = Basis.CommonPractice("what is not known is not safe");

    /// <summary>
    /// Stronger than the manual specifies, or nobody knows that it is not: only what the manual names, unless its maker agrees.
    /// </summary>
    public static readonly Caution OnlyTheManual = new("caution.onlyTheManual", Manual);

    /// <summary>A computed spring setting: only what the manual names, unless its maker agrees.</summary>
    public static readonly Caution OnlyTheManualsSetting = new("caution.onlyTheManualsSetting", Manual);

    /// <summary>It needs another hole than the one that is there.</summary>
    public static readonly Caution RedrillOnlyWithMaker = new("caution.redrillOnlyWithMaker", Maker);

    /// <summary>Its hole is wider than the normal one for its size.</summary>
    public static readonly Caution LooseInHole = new("caution.looseInHole", Hole);

    /// <summary>A strong specimen may outlast a weak part, or nobody knows that it does not.</summary>
    public static readonly Caution MayNotProtect = new("caution.mayNotProtect", Verdict);

    /// <summary>A weak specimen may act in normal work, or nobody knows that it does not.</summary>
    public static readonly Caution MayActInWork = new("caution.mayActInWork", Verdict);
}
