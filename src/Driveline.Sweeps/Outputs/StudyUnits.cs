using Driveline.Quantities;
using Driveline.Sweeps.Rows;

namespace Driveline.Sweeps.Outputs;

/// <summary>The SI units of the columns of a study, as they stand at an axis.</summary>
internal static class StudyUnits
{
    // Names of outputs end in their unit, which a point such as ".expected" or a name in brackets may follow.
    private static readonly (string Ending, string Unit)[] OfNames = [("Nm", "N·m"), ("N", "N"), ("J", "J"), ("S", "s")];

    /// <summary>The name of a factor with its unit; of a factor that leads to no quantity of the case, its name.</summary>
    public static string OfFactor(Study study, Factor factor) => study.Case is { } file && factor.Words is null
        && CaseTarget.TryFind(file, factor.Name, out CaseTarget? target, out _) && target.Member.Quantity is { } quantity
        ? With(factor.Name, WrittenUnits.Of(quantity.Range.Dimension)[0].Symbol.Replace('.', '·'))
        : factor.Name;

    /// <summary>The name of an output with its unit; of a number without one and of an output in C#, its name.</summary>
    public static string OfOutput(StudyOutput output)
    {
        if (output.OfCase is not { } asked)
        {
            return output.Name;
        }

        string name = asked.Row.Name.Split('.')[1];
        return OfNames.FirstOrDefault(u => name.EndsWith(u.Ending, StringComparison.Ordinal)) is { Unit: { } unit }
            ? With(output.Name, unit)
            : output.Name;
    }

    private static string With(string name, string unit) => unit.Length == 0 ? name : name + " (" + unit + ")";
}
