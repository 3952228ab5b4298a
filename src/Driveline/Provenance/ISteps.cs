namespace Driveline.Provenance;

/// <summary>A recorder of calculation steps, passed to kernels as a generic struct so that the empty one costs nothing.</summary>
internal interface ISteps
{
    /// <summary>Records a step and its value in the step's SI unit.</summary>
    void Add(CalculationStep formula, double value);

    /// <summary>What is recorded from here on belongs to that end of the band.</summary>
    void Begin(SheetEnd end);
}
