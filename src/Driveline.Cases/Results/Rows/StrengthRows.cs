using Driveline.Fasteners;

namespace Driveline.Cases.Results;

/// <summary>What a bolt of a grade carries.</summary>
internal static class StrengthRows
{
    private static readonly ShapeOf<StrengthOfBolt> PerPlane = new ShapeOf<StrengthOfBolt>("shearLoad", "Load that cuts one plane, N.")
        .Band("shank", s => s.Shank, "Through the shank.")
        .Band("thread", s => s.Threaded, "Through the thread.");

    private static readonly ShapeOf<BoltStrength> Published = new ShapeOf<BoltStrength>(
            "published", "The printed cells, else the loads by the standard's rounding, N.")
        .Number("proofLoadN", s => s.ProofLoad?.Newtons, "Proof load, N.")
        .Number("tensileLoadN", s => s.MinimumTensileLoad.Newtons, "Least tensile load, N.")
        .Object("basis", s => s.MinimumTensileLoadBasis, BasisRows.Shape, "Where they come from.");

    public static readonly ShapeOf<StrengthOfBolt> Shape = new ShapeOf<StrengthOfBolt>(
            "strength", "What a bolt carries. Loads are stress times area, not rounded.")
        .Text("thread", s => s.Strength.Thread.Designation, "Its thread.")
        .Text("grade", s => s.Strength.Grade.Designation, "Its grade.")
        .Number("stressAreaMm2", s => s.Strength.Thread.StressArea.SquareMillimeters, "Stress area, mm².")
        .Number("rootAreaMm2", s => s.Strength.Thread.RootArea.SquareMillimeters, "Area at the thread's root, mm².")
        .Number("shankAreaMm2", s => s.Strength.Thread.ShankArea.SquareMillimeters, "Area of the shank, mm².")
        .Number("proofLoadN", s => s.Strength.Strength.ProofStress?.Pascals * s.Strength.Thread.StressArea.SquareMeters,
            "Load that it takes without set, N.")
        .Band("tensileLoadN", s => s.Strength.TensileLoad, "Load that tears it, N.")
        .Object("shearLoadPerPlaneN", s => s, PerPlane, "Load that cuts one plane, N.")
        .Object("published", s => s.Strength, Published, "The printed loads.")
        .Object("weakestBasis", s => s.Sources[0], BasisRows.Shape, "The weakest basis of all numbers.")
        .List("sources", s => s.Sources, BasisRows.Shape, "Every basis the numbers rest on, the weakest first.");
}
