using Driveline.Clutches;

namespace Driveline.Tests.Clutches;

/// <summary>
/// Two walls rubbed where they touch, cut into thin slices and stepped implicitly through time: a second method,
/// which shares no formula with the library. Outer faces are insulated.
/// </summary>
internal sealed class FiniteVolumeWall
{
    private readonly double[] capacity;
    private readonly double[] toNext;
    private readonly double[] rise;
    private readonly double[] source;
    private readonly int firstCells;
    private readonly double halfFirst;
    private readonly double halfSecond;

    private FiniteVolumeWall(ThermalMaterial first, double firstM, int firstCells, ThermalMaterial? second, double secondM, int secondCells)
    {
        int n = firstCells + secondCells;
        capacity = new double[n];
        toNext = new double[n];
        rise = new double[n];
        source = new double[n];
        this.firstCells = firstCells;
        double dx = firstM / firstCells;
        halfFirst = 2 * first.WPerMK / dx;
        double dy = second is null ? 1 : secondM / secondCells;
        halfSecond = second is null ? 0 : 2 * second.WPerMK / dy;
        for (int i = 0; i < n; i++)
        {
            bool inFirst = i < firstCells;
            capacity[i] = inFirst ? first.KgPerM3 * first.JPerKgK * dx : second!.KgPerM3 * second.JPerKgK * dy;
            toNext[i] = i == firstCells - 1 ? halfFirst * halfSecond / (halfFirst + halfSecond)
                : inFirst ? first.WPerMK / dx : second!.WPerMK / dy;
        }

        toNext[n - 1] = 0;
    }

    /// <summary>Heat stored in the first wall, J/m².</summary>
    public double FirstStored => Enumerable.Range(0, firstCells).Sum(i => capacity[i] * rise[i]);

    public double FirstMean => FirstStored / Enumerable.Range(0, firstCells).Sum(i => capacity[i]);

    public static FiniteVolumeWall One(ThermalMaterial material, double thicknessM, int cells) =>
        new(material, thicknessM, cells, null, 0, 0);

    public static FiniteVolumeWall Two(ThermalMaterial first, double firstM, ThermalMaterial second, double secondM, int cells) =>
        new(first, firstM, cells, second, secondM, cells);

    /// <summary>Steps to a time and returns the rise of the rubbed face.</summary>
    public double FaceRise(Func<double, double> fluxWPerM2, double timeS, int steps)
    {
        // Steps grow with the square, because the early face changes fastest.
        double t = 0;
        double flux = 0;
        for (int s = 1; s <= steps; s++)
        {
            double next = timeS * s * s / ((double)steps * steps);
            double dt = next - t;
            flux = fluxWPerM2(t + (dt / 2));
            Step(flux, dt);
            t = next;
        }

        double second = halfSecond > 0 ? rise[firstCells] : 0;
        return ((halfFirst * rise[firstCells - 1]) + (halfSecond * second) + fluxWPerM2(timeS)) / (halfFirst + halfSecond);
    }

    private void Step(double flux, double dt)
    {
        int n = rise.Length;
        Array.Clear(source);
        source[firstCells - 1] += flux * halfFirst / (halfFirst + halfSecond);
        if (halfSecond > 0)
        {
            source[firstCells] += flux * halfSecond / (halfFirst + halfSecond);
        }

        var c = new double[n];
        var d = new double[n];
        for (int i = 0; i < n; i++)
        {
            double left = i > 0 ? toNext[i - 1] : 0;
            double right = i < n - 1 ? toNext[i] : 0;
            double diagonal = (capacity[i] / dt) + left + right;
            double b = (capacity[i] / dt * rise[i]) + source[i];
            double m = diagonal + (i > 0 ? left * c[i - 1] : 0);
            c[i] = -right / m;
            d[i] = (b + (i > 0 ? left * d[i - 1] : 0)) / m;
        }

        rise[n - 1] = d[n - 1];
        for (int i = n - 2; i >= 0; i--)
        {
            rise[i] = d[i] - (c[i] * rise[i + 1]);
        }
    }
}
