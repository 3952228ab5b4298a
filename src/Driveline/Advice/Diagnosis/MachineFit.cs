using Driveline.Loads;

namespace Driveline.Advice;

/// <summary>What a kind of machine, and the protection it is told to have, rule out of the advice's catalogue.</summary>
/// <remarks>What is not known rules nothing out. A cause that is ruled out has no chance at all, not a small one.</remarks>
internal static class MachineFit
{
    private static readonly Cause[] OfClutch =
        [Cause.ClutchStuck, Cause.ClutchOvertightened, Cause.ClutchCoilBound, Cause.ClutchWorn, Cause.ClutchOiled, Cause.ClutchSetTooLoose,
            Cause.LiningsNotRunIn, Cause.OilLeak];

    private static readonly Cause[] OfBolt =
    [
        Cause.GradeTooSoft, Cause.GradeTooStrong, Cause.BoltUnmarked, Cause.DiameterTooSmall, Cause.DiameterTooLarge, Cause.ThreadsInPlane,
        Cause.LooseHoles, Cause.HubSeized, Cause.BoltFatigue, Cause.WrongHole,
    ];

    /// <summary>Questions about a deck, its blades and what they cut.</summary>
    private static readonly HashSet<string> OfCutters = new(StringComparer.Ordinal)
    {
        "scalping", "deckAttitude", "cuttingHeight", "bladeCondition", "blades", "whatStruck", "rotorAtStrike", "growth",
    };

    /// <summary>Questions about how a machine is driven over the ground.</summary>
    private static readonly HashSet<string> OfMoving = new(StringComparer.Ordinal) { "ground", "groundSpeed" };

    /// <summary>True when the cause can be at work on such a machine.</summary>
    public static bool Has(Cause cause, Complaint complaint)
    {
        bool isCutter = IsCutter(complaint.Machine);
        string? device = complaint.Facts.FirstOrDefault(f => f.Question == "device")?.Answer;
        return (isCutter || cause != Cause.DeckNoseDown)
            && (device is not ("shearBolt" or "cutOut" or "none") || Array.IndexOf(OfClutch, cause) < 0)
            && (device is not ("slipClutch" or "cutOut" or "none") || Array.IndexOf(OfBolt, cause) < 0);
    }

    /// <summary>True when the question makes sense for such a machine.</summary>
    public static bool Asks(string question, MachineKind machine) => (IsCutter(machine) || !OfCutters.Contains(question))
        && (Moves(machine) || !OfMoving.Contains(question));

    /// <summary>True when the remedy can be done on such a machine and its tractor.</summary>
    public static bool Does(string remedy, Complaint complaint)
    {
        bool isCutter = IsCutter(complaint.Machine);
        bool isFeathered = complaint.AnswerTo("ptoClutch") is not ("electric" or "hydraulic");
        return remedy switch
        {
            Remedies.SharpenBlades or Remedies.LevelDeck or Remedies.RaiseTheCut or Remedies.RenewBlades or Remedies.EaseTheWork
                => isCutter,
            Remedies.TakeLess or Remedies.BalanceRotor => !isCutter,
            Remedies.EngageGently => isFeathered,
            Remedies.EngageAtLowSpeed => !isFeathered,
            _ => true,
        };
    }

    // It works where it stands.
    private static bool Moves(MachineKind machine) => machine is not (MachineKind.PostHoleAuger or MachineKind.FeedMixer
        or MachineKind.WoodChipper or MachineKind.AugerWagon);

    /// <summary>True for a machine that is drawn, and hangs on no lift arms.</summary>
    public static bool IsTrailed(MachineKind machine) => machine is MachineKind.RoundBaler or MachineKind.SmallSquareBaler
        or MachineKind.FeedMixer or MachineKind.AugerWagon;

    /// <summary>True for a machine with a deck and blades, or one that nobody has named: nothing is ruled out of it.</summary>
    public static bool IsCutter(MachineKind machine) =>
        machine is MachineKind.NotKnown or MachineKind.Other or MachineKind.RotaryCutter or MachineKind.FlailMower;
}
