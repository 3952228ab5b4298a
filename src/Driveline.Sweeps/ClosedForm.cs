using System.Numerics;
using System.Runtime.InteropServices;
using Driveline.Quantities;

namespace Driveline.Sweeps;

/// <summary>Outputs in closed form, computed many rows at once by vectors. They allocate nothing.</summary>
public static class ClosedForm
{
    /// <summary>Break torque of a shear-bolt joint, T = m · A · τ · r, N·m.</summary>
    /// <param name="planes">Shear planes that share the load; 1 or more.</param>
    /// <param name="area">Place of the factor that is the area of a plane, m².</param>
    /// <param name="shearStrength">Place of the factor that is the ultimate shear strength, Pa.</param>
    /// <param name="radius">Place of the factor that is the radius of the planes, m.</param>
    /// <exception cref="ArgumentOutOfRangeException">No plane, or no place.</exception>
    /// <example>2 planes, 50 mm², 300 MPa, 60 mm: 1800 N·m.</example>
    public static ColumnOutput BreakTorque(int planes, int area, int shearStrength, int radius)
    {
        double count = Guard.Within(planes, 1, int.MaxValue, "Shear planes", nameof(planes));
        Place(area, nameof(area));
        Place(shearStrength, nameof(shearStrength));
        Place(radius, nameof(radius));
        return (factors, into) => Product(count, factors[area], factors[shearStrength], factors[radius], into);
    }

    /// <summary>Slip torque of a disc clutch, T = N · μ · F · r, N·m.</summary>
    /// <param name="faces">Rubbing face pairs; 1 to 40.</param>
    /// <param name="friction">Place of the factor that is the friction coefficient.</param>
    /// <param name="clampForce">Place of the factor that is the clamp force, N.</param>
    /// <param name="meanRadiusM">Mean radius of the faces, m; above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of its range.</exception>
    /// <example>2 faces, μ 0.35, 7200 N, 106.25 mm: 535.5 N·m.</example>
    public static ColumnOutput SlipTorque(int faces, int friction, int clampForce, double meanRadiusM)
    {
        double factor = Guard.Within(faces, 1, 40, "Number of friction faces", nameof(faces))
            * Guard.Positive(meanRadiusM, "Mean radius", "m", nameof(meanRadiusM));
        Place(friction, nameof(friction));
        Place(clampForce, nameof(clampForce));
        return (factors, into) => Product(factor, factors[friction], factors[clampForce], into);
    }

    /// <summary>Slip torque of a disc clutch with a varying mean radius, T = N · μ · F · r, N·m.</summary>
    /// <param name="faces">Rubbing face pairs; 1 to 40.</param>
    /// <param name="friction">Place of the factor that is the friction coefficient.</param>
    /// <param name="clampForce">Place of the factor that is the clamp force, N.</param>
    /// <param name="meanRadius">Place of the factor that is the mean radius, m.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of its range.</exception>
    public static ColumnOutput SlipTorque(int faces, int friction, int clampForce, int meanRadius)
    {
        double count = Guard.Within(faces, 1, 40, "Number of friction faces", nameof(faces));
        Place(friction, nameof(friction));
        Place(clampForce, nameof(clampForce));
        Place(meanRadius, nameof(meanRadius));
        return (factors, into) => Product(count, factors[friction], factors[clampForce], factors[meanRadius], into);
    }

    private static void Place(int factor, string parameter) => Guard.Within(factor, 0, int.MaxValue, "Place of a factor", parameter);

    /// <summary>A column in proportion to another.</summary>
    internal static void Scale(double factor, ReadOnlySpan<double> a, Span<double> into)
    {
        ReadOnlySpan<Vector<double>> wideA = MemoryMarshal.Cast<double, Vector<double>>(a);
        Span<Vector<double>> wide = MemoryMarshal.Cast<double, Vector<double>>(into)[..wideA.Length];
        var times = new Vector<double>(factor);
        for (int k = 0; k < wideA.Length; k++)
        {
            wide[k] = times * wideA[k];
        }

        for (int k = wideA.Length * Vector<double>.Count; k < into.Length; k++)
        {
            into[k] = factor * a[k];
        }
    }

    private static void Product(double factor, ReadOnlySpan<double> a, ReadOnlySpan<double> b, Span<double> into)
    {
        ReadOnlySpan<Vector<double>> wideA = MemoryMarshal.Cast<double, Vector<double>>(a);
        ReadOnlySpan<Vector<double>> wideB = MemoryMarshal.Cast<double, Vector<double>>(b)[..wideA.Length];
        Span<Vector<double>> wide = MemoryMarshal.Cast<double, Vector<double>>(into)[..wideA.Length];
        var times = new Vector<double>(factor);
        for (int k = 0; k < wideA.Length; k++)
        {
            wide[k] = times * wideA[k] * wideB[k];
        }

        for (int k = wideA.Length * Vector<double>.Count; k < into.Length; k++)
        {
            into[k] = factor * a[k] * b[k];
        }
    }

    private static void Product(double factor, ReadOnlySpan<double> a, ReadOnlySpan<double> b, ReadOnlySpan<double> c, Span<double> into)
    {
        ReadOnlySpan<Vector<double>> wideA = MemoryMarshal.Cast<double, Vector<double>>(a);
        ReadOnlySpan<Vector<double>> wideB = MemoryMarshal.Cast<double, Vector<double>>(b)[..wideA.Length];
        ReadOnlySpan<Vector<double>> wideC = MemoryMarshal.Cast<double, Vector<double>>(c)[..wideA.Length];
        Span<Vector<double>> wide = MemoryMarshal.Cast<double, Vector<double>>(into)[..wideA.Length];
        var times = new Vector<double>(factor);
        for (int k = 0; k < wideA.Length; k++)
        {
            wide[k] = times * wideA[k] * wideB[k] * wideC[k];
        }

        for (int k = wideA.Length * Vector<double>.Count; k < into.Length; k++)
        {
            into[k] = factor * a[k] * b[k] * c[k];
        }
    }
}
