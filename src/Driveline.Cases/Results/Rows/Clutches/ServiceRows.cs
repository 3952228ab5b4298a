using Driveline.Clutches;

namespace Driveline.Cases.Results;

/// <summary>How to service a slip clutch.</summary>
internal static class ServiceRows
{
    private static readonly ShapeOf<ServiceStep> Step = new ShapeOf<ServiceStep>("serviceStep", "One step.")
        .Text("code", s => s.Code, "Stable code.")
        .Words("text", (s, texts, units) => texts.Of(s.Words, units), "It in words.")
        .List("cautions", s => s.Cautions, CautionRows.Shape, "Cautions; show them all.")
        .Object("source", s => s.Source, BasisRows.Shape, "Where it comes from.");

    public static readonly ShapeOf<ServiceProcedure> Shape = new ShapeOf<ServiceProcedure>("service", "A service of the clutch.")
        .Text("code", p => p.Code, "Stable code.")
        .Words("text", (p, texts, units) => texts.Of(p.Code, units), "Its name.")
        .List("steps", p => p.Steps, Step, "Its steps, in order.");
}
