using Driveline.Chains;
using Driveline.Protection;
using Driveline.ShearBolts;

namespace Driveline.Reports.Simulations;

/// <summary>What a device did, where a part's row says whether it was damaged: it is the protection, and acting is no damage.</summary>
internal static class DeviceWords
{
    /// <summary>The code of the words; "may" where the run does not rest on facts alone, or its torque may come out too low.</summary>
    public static string CodeOf(ProtectiveDevice device, SimulatedLoad load, SimulationCheck check)
    {
        if (check.Simulation.Strike is { MissesDriveline: true })
        {
            return "simulate.device.held." + device.Kind;
        }

        if (check.With is not { } run || load.WithProtection is not { } most)
        {
            return "simulate.damaged.notKnown";
        }

        bool acted = run.TripTimeOf(device) is not null;
        if (!acted && IsStuck(device))
        {
            return "simulate.device.stuck";
        }

        bool isSure = check.Simulation.RestsOnFacts && run.IsComplete
            && (acted || (!check.IsBlowUnbounded && most < device.Breakaway?.Low && most < device.Running?.Low));
        return "simulate.device." + (!isSure ? "may." : acted ? "acted." : "held.") + device.Kind;
    }

    private static bool IsStuck(ProtectiveDevice device) => device.IsStuck || device.NeverLetsGo
        || device is ShearBoltDevice { BreakTorque.Joint.Hub: HubState.Seized };
}
