namespace Driveline.Tests.Cases;

/// <summary>The law of removal for every other case with simulations; classes run side by side.</summary>
public class RemovalLawSimulatedTests
{
    public static TheoryData<string> Demos => [.. RemovalLaw.Simulated.Where((_, k) => k % 2 == 0)];

    [Theory]
    [MemberData(nameof(Demos))]
    public void Demo_AnyFactOrElementLess_CreatesNoYesAndLiftsNoStop(string name) => RemovalLaw.Holds(name);
}
