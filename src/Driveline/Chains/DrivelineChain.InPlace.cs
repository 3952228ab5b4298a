using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Chains;

/// <content>The driveline at its speed and its work.</content>
public sealed partial class DrivelineChain
{
    /// <summary>The same driveline with every fitted slip clutch judged in its place: its speed, and the heat of its slips.</summary>
    /// <remarks>
    /// A clutch turns at the PTO speed times the ratios before it; it speeds up the rotors behind it while they take the highest torque
    /// of work. Without speed, a bounded work, plates or inertias that heat stays not known.
    /// </remarks>
    /// <param name="ptoSpeed">Speed of the PTO in work; null when not known.</param>
    /// <param name="work">Steady peaks of work at the PTO; null when not known.</param>
    public DrivelineChain InPlace(RotationalSpeed? ptoSpeed, TorqueBand? work)
    {
        DrivelineChain chain = this;
        for (int k = 0; k < Devices.Count; k++)
        {
            if (Devices[k] is SlipClutchDevice { Fitted: not null } clutch)
            {
                chain = chain.With(clutch, ClutchInPlace.Of(clutch, chain, ptoSpeed, work));
            }
        }

        return chain;
    }

    /// <summary>True when a fitted slip clutch is to be judged in its place.</summary>
    internal bool HasFittedClutch
    {
        get
        {
            for (int k = 0; k < Devices.Count; k++)
            {
                if (Devices[k] is SlipClutchDevice { Fitted: not null })
                {
                    return true;
                }
            }

            return false;
        }
    }
}
