namespace Driveline.Torsion;

/// <summary>
/// A coupling that drives forward without limit and overruns freely; it takes hold again as soon as the driving side catches up.
/// </summary>
/// <remarks>It sits in line with a shaft. Immutable.</remarks>
public sealed class OneWayCoupling : Coupling
{
    private OneWayCoupling()
    {
    }

    /// <summary>The coupling that drives forward.</summary>
    public static OneWayCoupling Forward { get; } = new();

    internal override void WriteTo(Mechanism m, int link, double ratio)
    {
        m.Breakaway[link] = m.Running[link] = double.PositiveInfinity;
        m.ReverseBreakaway[link] = m.ReverseRunning[link] = 0;
    }
}
