namespace Driveline.Tests.Cases;

/// <summary>The law of removal for what is not simulated; classes run side by side.</summary>
public class RemovalLawTests
{
    public static TheoryData<string> Demos => [.. DemoCases.Names.Except(RemovalLaw.Simulated)];

    [Theory]
    [MemberData(nameof(Demos))]
    public void Demo_AnyFactOrElementLess_CreatesNoYesAndLiftsNoStop(string name) => RemovalLaw.Holds(name);
}
