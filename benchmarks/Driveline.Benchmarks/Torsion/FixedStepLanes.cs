using System.Runtime.Intrinsics;
using V = System.Runtime.Intrinsics.Vector256<double>;

namespace Driveline.Benchmarks.Torsion;

/// <summary>The baseline in lanes: <see cref="FixedStepChain"/> for four chains at once, each its own stiffness in the middle.</summary>
/// <remarks>Eight lanes are two of these. A break is found by secant steps of all lanes within the step in which one crosses.</remarks>
internal sealed class FixedStepLanes
{
    public const int Lanes = 4;

    private readonly V k0;
    private readonly V k1;
    private readonly V k2;
    private readonly V c0;
    private readonly V c1;
    private readonly V c2;
    private readonly V i0;
    private readonly V i1;
    private readonly V i2;
    private readonly V capacity;
    private readonly V[] y = new V[6];
    private readonly V[] y0 = new V[6];
    private readonly V[] a = new V[6];
    private readonly V[] a0 = new V[6];
    private readonly V[] b = new V[6];
    private readonly V[] d = new V[6];
    private readonly V[] e = new V[6];
    private readonly V[] stage = new V[6];
    private readonly V[] torque = new V[3];
    private readonly V[] slope = new V[3];
    private readonly V[] peak = new V[3];
    private V whole;

    public FixedStepLanes(double[] inertia, double[] stiffness, ReadOnlySpan<double> middle, double[] damping, double capacity)
    {
        k0 = Vector256.Create(stiffness[0]);
        k1 = Vector256.Create(middle);
        k2 = Vector256.Create(stiffness[2]);
        c0 = Vector256.Create(damping[0]);
        c1 = Vector256.Create(damping[1]);
        c2 = Vector256.Create(damping[2]);
        i0 = Vector256.Create(1 / inertia[0]);
        i1 = Vector256.Create(1 / inertia[1]);
        i2 = Vector256.Create(1 / inertia[2]);
        this.capacity = Vector256.Create(capacity);
    }

    /// <summary>Largest torque of a shaft in one lane.</summary>
    public double Peak(int shaft, int lane) => peak[shaft].GetElement(lane);

    /// <summary>
    /// Runs all lanes from turning at a speed with the last rotor jammed; returns the sum of the peaks of the last shaft.
    /// </summary>
    public double Run(double speed, double seconds, int steps)
    {
        Array.Clear(y);
        Array.Clear(peak);
        y[3] = y[4] = y[5] = Vector256.Create(speed);
        whole = V.One;
        double h = seconds / steps;
        Rates(y, a);
        Torques();
        for (int n = 0; n < steps; n++)
        {
            Advance(Vector256.Create(h));
        }

        return Vector256.Sum(peak[2]);
    }

    private void Advance(V h)
    {
        V t0 = torque[0], t1 = torque[1], t2 = torque[2], s0 = slope[0], s1 = slope[1], s2 = slope[2];
        Array.Copy(y, y0, 6);
        Array.Copy(a, a0, 6);
        Step(h);
        V crosses = Vector256.GreaterThan(torque[1], capacity);
        if (crosses != V.Zero)
        {
            Break(h, t1, crosses);
        }

        Raise(0, t0, s0, h);
        Raise(1, t1, s1, h);
        Raise(2, t2, s2, h);
    }

    // The lanes that cross: up to the crossing, then the rest of the step without the shaft; the others whole.
    private void Break(V h, V before, V crosses)
    {
        V left = V.Zero, right = V.One, fl = before - capacity, fr = torque[1] - capacity, part = V.One;
        for (int i = 0; i < 30; i++)
        {
            V open = crosses & Vector256.GreaterThan(Vector256.Min(Vector256.Abs(fr), Vector256.Abs(fl)), 1e-12 * capacity);
            if (open == V.Zero)
            {
                break;
            }

            part = Vector256.ConditionalSelect(open, right - (fr * (right - left) / (fr - fl)), part);
            Again(part * h);
            V f = torque[1] - capacity;
            V isRight = open & Vector256.GreaterThan(f, V.Zero);
            V isLeft = Vector256.AndNot(open, isRight);
            right = Vector256.ConditionalSelect(isRight, part, right);
            fr = Vector256.ConditionalSelect(isRight, f, fr);
            left = Vector256.ConditionalSelect(isLeft, part, left);
            fl = Vector256.ConditionalSelect(isLeft, f, fl);
        }

        Again(Vector256.ConditionalSelect(crosses, part, V.One) * h);
        peak[1] = Vector256.ConditionalSelect(crosses, capacity, peak[1]);
        whole = Vector256.ConditionalSelect(crosses, V.Zero, whole);
        Rates(y, a);
        Step(Vector256.ConditionalSelect(crosses, V.One - part, V.Zero) * h);
    }

    private void Again(V h)
    {
        Array.Copy(y0, y, 6);
        Array.Copy(a0, a, 6);
        Step(h);
    }

    private void Step(V h)
    {
        V half = 0.5 * h;
        for (int i = 0; i < 6; i++)
        {
            stage[i] = y[i] + (half * a[i]);
        }

        Rates(stage, b);
        for (int i = 0; i < 6; i++)
        {
            stage[i] = y[i] + (half * b[i]);
        }

        Rates(stage, d);
        for (int i = 0; i < 6; i++)
        {
            stage[i] = y[i] + (h * d[i]);
        }

        Rates(stage, e);
        V sixth = h / 6;
        for (int i = 0; i < 6; i++)
        {
            y[i] += sixth * (a[i] + (2 * (b[i] + d[i])) + e[i]);
        }

        Rates(y, a);
        Torques();
    }

    private void Rates(V[] x, V[] rate)
    {
        V d0 = x[3] - x[4], d1 = x[4] - x[5];
        V t0 = (k0 * x[0]) + (c0 * d0), t1 = whole * ((k1 * x[1]) + (c1 * d1)), t2 = (k2 * x[2]) + (c2 * x[5]);
        rate[0] = d0;
        rate[1] = d1;
        rate[2] = x[5];
        rate[3] = -t0 * i0;
        rate[4] = (t0 - t1) * i1;
        rate[5] = (t1 - t2) * i2;
    }

    private void Torques()
    {
        torque[0] = (k0 * y[0]) + (c0 * a[0]);
        slope[0] = (k0 * a[0]) + (c0 * (a[3] - a[4]));
        torque[1] = whole * ((k1 * y[1]) + (c1 * a[1]));
        slope[1] = whole * ((k1 * a[1]) + (c1 * (a[4] - a[5])));
        torque[2] = (k2 * y[2]) + (c2 * a[2]);
        slope[2] = (k2 * a[2]) + (c2 * a[5]);
    }

    private void Raise(int i, V before, V slopeBefore, V h)
    {
        V highest = Vector256.Max(before, torque[i]);
        V turns = Vector256.GreaterThan(slopeBefore, V.Zero) & Vector256.LessThan(slope[i], V.Zero)
            & Vector256.GreaterThan(highest, 0.99 * peak[i]);
        if (turns != V.Zero)
        {
            V p = h * slopeBefore, q = h * slope[i], rise = torque[i] - before;
            V cubic = (-2 * rise) + p + q, square = (3 * rise) - (2 * p) - q;
            V s = -p / (square - Vector256.Sqrt((square * square) - (3 * cubic * p)));
            V top = before + (s * (p + (s * (square + (s * cubic)))));
            highest = Vector256.ConditionalSelect(turns, Vector256.Max(highest, top), highest);
        }

        peak[i] = Vector256.Max(peak[i], highest);
    }
}
