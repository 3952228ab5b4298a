using Driveline.Findings;
using Driveline.Loads;

namespace Driveline.Advice;

/// <summary>How to change a shear bolt, step by step, each with its cautions.</summary>
/// <remarks>Common practice and the steps the manuals share; the machine's manual decides, above all the bolt and its tightening.</remarks>
public sealed class BoltChangeCard
{
    private IReadOnlyList<Caution>? cautions;

    private BoltChangeCard(IReadOnlyList<CardStep> steps) => Steps = steps;

    /// <summary>The steps in order.</summary>
    public IReadOnlyList<CardStep> Steps { get; }

    /// <summary>Every caution of the card, each once, in the order of <see cref="Caution.All"/>.</summary>
    public IReadOnlyList<Caution> Cautions => cautions ??=
        [.. Caution.All.Where(c => Caution.Always.Contains(c) || Steps.Any(s => s.Cautions.Contains(c)))];

    /// <summary>The card for a machine and the place of its bolt.</summary>
    /// <param name="machine">The kind of machine.</param>
    /// <param name="access">How the bolt is reached.</param>
    public static BoltChangeCard For(MachineKind machine, BoltAccess access)
    {
        var steps = new List<CardStep>
        {
            new("boltChange.stop", Caution.StopAndKeyOut, Caution.RotorCoasts),
            new("boltChange.lowerOrBlock", Caution.BlockRaisedDeck),
            new("boltChange.protect"),
            new("boltChange.freeTheJam", Caution.BlockRaisedDeck, Caution.JammedDriveSpringsBack),
        };
        if (access != BoltAccess.YokeInReach)
        {
            steps.Add(new("boltChange.openShield"));
        }

        steps.Add(new("boltChange.supportShaft", Caution.SupportHalfShafts));
        steps.Add(new("boltChange.getStubOut"));
        steps.Add(new("boltChange.lookAtFracture"));
        steps.Add(new("boltChange.turnHub"));
        steps.Add(new("boltChange.greaseHub"));
        steps.Add(new("boltChange.deburr"));
        steps.Add(new("boltChange.checkHoles"));
        steps.Add(new("boltChange.align"));
        steps.Add(new("boltChange.specifiedBolt", Caution.ManualDecides, Caution.StrongerIsAChange));
        steps.Add(new("boltChange.shankInPlane"));
        steps.Add(new("boltChange.tighten"));
        steps.Add(new(machine == MachineKind.PostHoleAuger ? "boltChange.nothingProudAuger" : "boltChange.nothingProud",
            Caution.NoProudBolt));
        steps.Add(new("boltChange.shieldsBack", Caution.GuardsOn));
        steps.Add(new("boltChange.turnByHand", Caution.StopAndKeyOut));
        steps.Add(new("boltChange.clearAway", Caution.GuardsOn, Caution.BystandersAway));
        steps.Add(new("boltChange.startGently", true, Caution.BystandersAway));
        return new BoltChangeCard(steps.AsReadOnly());
    }
}
