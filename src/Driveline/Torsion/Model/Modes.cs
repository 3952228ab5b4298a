using System.Collections;
using Driveline.Quantities;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Double;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace Driveline.Torsion;

/// <summary>Undamped natural modes of a model whose couplings hold, without its obstacles, lowest first.</summary>
/// <remarks>
/// With W = M^(−1/2)·Bᵀ·K^(1/2), M inertias, K stiffnesses, B which shaft joins which rotors, the natural frequencies are the
/// singular values of W: real, and each good to about 1e-15 of the highest. Rotors joined by a rigid coupling count as one;
/// held rotors do not move; a joint counts as straight; backlash as taken up.
/// </remarks>
internal sealed class Modes : IReadOnlyList<NaturalMode>
{
    private readonly NaturalMode[] modes;

    private Modes(NaturalMode[] modes) => this.modes = modes;

    /// <summary>Number of modes: one for each rotor, or group of rigidly joined rotors, that is free to move.</summary>
    public int Count => modes.Length;

    /// <summary>Mode number index, lowest frequency first.</summary>
    public NaturalMode this[int index] => modes[index];

    /// <summary>The modes of a model.</summary>
    /// <exception cref="ArgumentNullException">The model is null.</exception>
    /// <example>0.8 and 0.2 kg·m² on 2000 N·m/rad: 0 and 111.8034 rad/s (17.794 Hz).</example>
    public static Modes Of(TorsionModel model)
    {
        Mechanism m = Guard.NotNull(model, nameof(model)).Mechanism;
        int[] group = Groups(m, out int groups);
        double[] inertia = new double[groups];
        for (int i = 0; i < m.Rotors; i++)
        {
            inertia[group[i]] += m.Inertia[i];
        }

        int[] column = Enumerable.Range(0, groups).Where(g => !double.IsPositiveInfinity(inertia[g])).ToArray();
        int[] springs = Enumerable.Range(0, m.Links).Where(l => m.To[l] >= 0 && m.IsElastic(l)).ToArray();
        double[] frequencies = new double[column.Length];
        double[][] shapes = new double[column.Length][];
        if (springs.Length > 0)
        {
            Solve(m, group, inertia, column, springs, frequencies, shapes);
        }

        for (int k = 0; k < shapes.Length; k++)
        {
            shapes[k] ??= Enumerable.Repeat(1.0, groups).ToArray();
        }

        var modes = new NaturalMode[column.Length];
        for (int k = 0; k < modes.Length; k++)
        {
            modes[k] = new NaturalMode(model, frequencies[k], OfRotors(shapes[k], group));
        }

        Array.Sort(modes, (a, b) => a.RadPerS.CompareTo(b.RadPerS));
        return new Modes(modes);
    }

    /// <inheritdoc/>
    public IEnumerator<NaturalMode> GetEnumerator() => ((IEnumerable<NaturalMode>)modes).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => modes.GetEnumerator();

    private static void Solve(
        Mechanism m, int[] group, double[] inertia, int[] column, int[] springs, double[] frequencies, double[][] shapes)
    {
        Matrix<double> w = DenseMatrix.Create(column.Length, springs.Length, 0);
        for (int s = 0; s < springs.Length; s++)
        {
            int l = springs[s];
            double root = Math.Sqrt(m.Stiffness[l]);
            Enter(w, column, inertia, group[m.From[l]], s, root);
            Enter(w, column, inertia, group[m.To[l]], s, -root);
        }

        Svd<double> svd = w.Svd(true);
        for (int k = 0; k < Math.Min(column.Length, springs.Length); k++)
        {
            frequencies[k] = svd.S[k];
            shapes[k] = new double[inertia.Length];
            for (int g = 0; g < column.Length; g++)
            {
                shapes[k][column[g]] = svd.U[g, k] / Math.Sqrt(inertia[column[g]]);
            }
        }
    }

    private static void Enter(Matrix<double> w, int[] column, double[] inertia, int g, int spring, double root)
    {
        int row = Array.IndexOf(column, g);
        if (row >= 0)
        {
            w[row, spring] += root / Math.Sqrt(inertia[g]);
        }
    }

    private static double[] OfRotors(double[] shape, int[] group)
    {
        double largest = shape.Max(Math.Abs);
        double[] rotors = Array.ConvertAll(group, g => shape[g] / largest);
        double first = Array.Find(rotors, a => Math.Abs(a) > 1e-12);
        return first < 0 ? Array.ConvertAll(rotors, a => -a) : rotors;
    }

    private static int[] Groups(Mechanism m, out int groups)
    {
        int[] group = Enumerable.Range(0, m.Rotors).ToArray();
        for (int l = 0; l < m.Links; l++)
        {
            if (m.To[l] >= 0 && !m.IsElastic(l))
            {
                int kept = group[m.From[l]];
                int merged = group[m.To[l]];
                group = Array.ConvertAll(group, g => g == merged ? kept : g);
            }
        }

        int[] names = group.Distinct().ToArray();
        groups = names.Length;
        return Array.ConvertAll(group, g => Array.IndexOf(names, g));
    }
}
