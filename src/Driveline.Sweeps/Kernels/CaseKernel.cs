using Driveline.Cases;
using Driveline.Chains;
using Driveline.Quantities;
using Driveline.Sweeps.Outputs;
using Driveline.Sweeps.Rows;
using Driveline.Sweeps.Running;

namespace Driveline.Sweeps.Kernels;

/// <summary>Computes a study of one device in closed form: over columns, without a case for each row.</summary>
/// <remarks>
/// Every output is a torque or force of the same device, and every factor a fact of it. Factors that the formula holds are its variables;
/// any others must be lists, and each combination of them has a device of its own. What the case permits bounds the variables by linear
/// inequalities, so that a box whose corners are permitted is permitted throughout. At each corner the kernel is held against the case:
/// where they differ by more than <see cref="Tolerance"/>, or a corner is not permitted, rows are computed by cases. So are rows beyond
/// the box, which holds all but a billionth at each side of a distribution without ends, or all but more where that is not permitted.
/// </remarks>
internal sealed class CaseKernel
{
    /// <summary>Greatest difference from the case, of its value.</summary>
    public const double Tolerance = 1e-12;

    private const int MostCorners = 4096;
    private const int MostVariables = 4;
    private static readonly double[] Tails = [1e-9, 1e-5, 1e-2];

    private readonly ClosedOutput[] outputs;
    private readonly KernelFactors factors;
    private readonly DeviceKernel?[] devices;

    private CaseKernel(ClosedOutput[] outputs, KernelFactors factors, DeviceKernel?[] devices)
    {
        this.outputs = outputs;
        this.factors = factors;
        this.devices = devices;
    }

    /// <summary>The kernel of a study; null when its rows need cases.</summary>
    public static CaseKernel? Of(
        CaseFile file, IReadOnlyList<Factor> factors, IReadOnlyList<CaseTarget> targets, CaseRows rows, IReadOnlyList<CaseOutput> outputs)
    {
        if (outputs.Count == 0 || outputs.Any(o => o.Row.Closed is null))
        {
            return null;
        }

        CaseAssessment asked = CaseAssessment.Of(file);
        string?[] places = [.. outputs.Select(o => DeviceOf(asked, o)?.Place?.Path).Distinct()];
        return places.Length == 1 && places[0] is { } place
            && factors.All(f => f.Name.StartsWith(place + ".", StringComparison.Ordinal))
            ? Tails.Take(KernelFactors.HaveTails(factors) ? Tails.Length : 1)
                .Select(tail => In(new KernelFactors(factors, targets, tail), rows, outputs)).FirstOrDefault(k => k is not null)
            : null;
    }

    /// <summary>Computes the rows of a group.</summary>
    /// <param name="into">The group, with its factors.</param>
    /// <param name="places">Places of the outputs in it.</param>
    /// <param name="needsCase">Receives which rows are not computed.</param>
    public void Compute(RowGroup into, int[] places, Span<bool> needsCase)
    {
        needsCase.Clear();
        if (!TryColumns(into, places))
        {
            Span<double> variables = stackalloc double[factors.Variables.Length];
            for (int k = 0; k < into.Count; k++)
            {
                bool isInside = factors.TryRead(into.Factors, k, variables);
                if (isInside && devices[factors.CombinationOf(into.Factors, k)] is { } device)
                {
                    Row(device, variables, into, places, k);
                }
                else
                {
                    needsCase[k] = true;
                }
            }
        }
    }

    private static CaseKernel? In(KernelFactors factors, CaseRows rows, IReadOnlyList<CaseOutput> outputs)
    {
        if (factors.Variables.Length > MostVariables || factors.Combinations * factors.Corners > MostCorners)
        {
            return null;
        }

        var devices = new DeviceKernel?[factors.Combinations];
        for (int c = 0; c < devices.Length; c++)
        {
            devices[c] = Held(factors, c, rows, outputs);
        }

        return devices.All(d => d is null) ? null : new CaseKernel([.. outputs.Select(o => o.Row.Closed!.Value)], factors, devices);
    }

    // The kernel of a combination, which gives at every corner what the case gives.
    private static DeviceKernel? Held(KernelFactors factors, int combination, CaseRows rows, IReadOnlyList<CaseOutput> outputs)
    {
        DeviceKernel? kernel = null;
        for (int corner = 0; corner < factors.Corners; corner++)
        {
            double[][] row = factors.Row(combination, corner);
            if (Asked(rows, row) is not { } asked)
            {
                return null;
            }

            kernel ??= DeviceKernel.Of(DeviceOf(asked, outputs[0]), factors.Members);
            double[] variables = [.. factors.Variables.Select(v => row[v][0])];
            if (kernel is null || !outputs.All(o => IsSame(o, kernel, variables, asked)))
            {
                return null;
            }
        }

        return kernel;
    }

    private static CaseAssessment? Asked(CaseRows rows, double[][] row)
    {
        try
        {
            return rows.Asked(row, 0, new CaseScratch(row.Length), out _);
        }
        catch (ArgumentException)
        {
            return null;
        }
    }

    private static bool IsSame(CaseOutput output, DeviceKernel kernel, double[] variables, CaseAssessment asked)
    {
        double ofCase = output.Number(asked, CancellationToken.None);
        double ofKernel = kernel.At(output.Row.Closed!.Value.Kind, variables).At(output.Row.Closed.Value.End);
        return ofCase.Equals(ofKernel) || Math.Abs(ofKernel - ofCase) <= Tolerance * Math.Abs(ofCase);
    }

    private static ProtectiveDevice? DeviceOf(CaseAssessment asked, CaseOutput output) =>
        CaseOutputs.DeviceOf(asked, output.Row.Named, output.Of);

    private bool TryColumns(RowGroup into, int[] places)
    {
        if (devices is not [{ } device] || factors.Variables.Length != 1)
        {
            return false;
        }

        ReadOnlySpan<double> column = into.Factors[factors.Variables[0]].AsSpan(0, into.Count);
        bool isDone = factors.HoldsAll(column);
        for (int o = 0; o < outputs.Length && isDone; o++)
        {
            isDone = device.TryColumn(outputs[o], column, into.Numbers[places[o]].AsSpan(0, into.Count));
        }

        return isDone;
    }

    private void Row(DeviceKernel device, ReadOnlySpan<double> variables, RowGroup into, int[] places, int row)
    {
        Band band = default;
        for (int o = 0; o < outputs.Length; o++)
        {
            band = o > 0 && outputs[o].Kind == outputs[o - 1].Kind ? band : device.At(outputs[o].Kind, variables);
            into.Numbers[places[o]][row] = band.At(outputs[o].End);
        }
    }
}
