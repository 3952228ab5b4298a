using Driveline.Findings;
using Driveline.Quantities;

namespace Driveline.Clutches;

/// <summary>Where the width of a slip torque comes from, from the lowest running torque to the highest breakaway.</summary>
/// <remarks>
/// T = N · μ · F · r at each end, and the breakaway's high end over the running one: the ratios of high over low multiply. Length and wear
/// of the springs act on the force together: each counts the mean of what it adds first and what it adds last.
/// </remarks>
internal static class SlipTorqueDoubts
{
    public static IReadOnlyList<TorqueDoubt> Of(SlipTorque torque)
    {
        var all = new List<TorqueDoubt>();
        Band running = torque.Running.SiBand;
        if (torque.Source == SlipTorqueSource.Calculated && torque.Clutch is { SpringLength: { } length } clutch)
        {
            FrictionBand friction = clutch.Facing.Friction(torque.Condition.Surface);
            all.Add(TorqueDoubt.Of(
                DoubtCodes.Friction, Width(friction.Running.SiBand), friction.Running.Basis, Measurements.SlipTest));
            all.Add(TorqueDoubt.Of(
                DoubtCodes.RunIn, Width(SlipTorqueRules.RadiusM(clutch, torque.Condition.RunIn)), null, Measurements.SlipTest));
            AddSprings(clutch, torque.Condition, length, all);
        }
        else if (torque.Source == SlipTorqueSource.Measured && torque.Condition.LastSlipTest?.Running is { } read)
        {
            double width = Width(read.SiBand);
            all.Add(TorqueDoubt.Of(DoubtCodes.Reading, width, read.Basis, Measurements.SlipTest));
            all.Add(TorqueDoubt.Of(DoubtCodes.Faces, Width(running) / width, torque.Running.Basis, Measurements.SlipTest));
        }
        else
        {
            all.Add(TorqueDoubt.Of(DoubtCodes.Stated, Width(running), torque.Running.Basis, Measurements.SlipTest));
        }

        double rise = running.IsBounded ? torque.Breakaway.SiBand.High / running.High : 1;
        all.Add(TorqueDoubt.Of(DoubtCodes.Breakaway, rise, torque.Breakaway.Basis, Measurements.SlipTest));
        return TorqueDoubt.Ranked(all);
    }

    private static void AddSprings(DiscClutch clutch, ClutchCondition condition, LengthBand length, List<TorqueDoubt> all)
    {
        Band set = length.SiBand;
        Band wear = SlipTorqueRules.WearM(clutch.Faces, condition);
        Band setAlone = Band.Exactly(set.Expected);
        Band wearAlone = Band.Exactly(wear.Expected);
        double none = OfForce(setAlone, wearAlone);
        double bySet = OfForce(set, wearAlone);
        double byWear = OfForce(setAlone, wear);
        double both = OfForce(set, wear);
        all.Add(TorqueDoubt.Of(DoubtCodes.Springs, none, clutch.Springs.ForceBasis, Measurements.ClutchSprings));
        all.Add(TorqueDoubt.Of(
            DoubtCodes.SpringLength, MeanOf(bySet / none, both / byWear, both), length.Basis, Measurements.ClutchSprings));
        all.Add(TorqueDoubt.Of(
            DoubtCodes.Wear, MeanOf(byWear / none, both / bySet, both), condition.Wear?.Basis, Measurements.ClutchSprings));

        double OfForce(Band setM, Band wearM) => Width(clutch.Springs.ForceN(SlipTorqueRules.DeflectionM(clutch.Springs, setM, wearM)));
    }

    // ∞ / ∞ tells nothing: it was open before. Where only both together leave an end open, each does.
    private static double MeanOf(double addedFirst, double addedLast, double both) =>
        double.IsPositiveInfinity(addedFirst) || (double.IsPositiveInfinity(addedLast) && double.IsPositiveInfinity(both))
            ? double.PositiveInfinity
            : double.IsNaN(addedFirst) || addedLast == 0 ? 1
            : double.IsNaN(addedLast) ? addedFirst
            : Math.Sqrt(addedFirst * addedLast);

    private static double Width(Band band) => band.Low > 0 ? band.High / band.Low : double.PositiveInfinity;
}
