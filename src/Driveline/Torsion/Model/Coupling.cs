namespace Driveline.Torsion;

/// <summary>What joins two rotors, or sits in line with a shaft, and holds only so much torque.</summary>
/// <remarks>
/// Pure mechanics. The kinds are <see cref="BreakingCoupling"/>, <see cref="FrictionCoupling"/> and <see cref="OneWayCoupling"/>.
/// </remarks>
public abstract class Coupling
{
    private protected Coupling()
    {
    }

    internal abstract void WriteTo(Mechanism m, int link, double ratio);
}
