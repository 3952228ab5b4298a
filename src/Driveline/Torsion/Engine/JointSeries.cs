namespace Driveline.Torsion;

/// <summary>Power series of universal joints: R = cos β/(1 − sin²β·cos²θ), θ the yoke's angle.</summary>
/// <remarks>With sin²β·cos²θ = ½·sin²β·(1 + cos 2θ), R follows from the series of cos 2θ and sin 2θ by one division.</remarks>
internal sealed class JointSeries
{
    private const int Stride = StepSeries.Stride;

    // Four rows a link: cos 2θ, sin 2θ, R, and its denominator.
    private readonly double[] joint;

    public JointSeries(int links) => joint = new double[links * 4 * Stride];

    /// <summary>Coefficient j of the speed behind the joint, R(θ)·ω.</summary>
    public double Speed(Mechanism m, int l, int j, double[] speed, double[] angle)
    {
        int cos = l * 4 * Stride;
        int sin = cos + Stride;
        int ratio = sin + Stride;
        int den = ratio + Stride;
        int from = m.From[l];
        double scale = m.LinkRatio[l];
        double cosine = m.JointCosine[l];
        double half = 0.5 * (1 - (cosine * cosine));
        if (j == 0)
        {
            double twice = 2 * ((scale * angle[from * Stride]) + m.JointPhase[l]);
            joint[cos] = Math.Cos(twice);
            joint[sin] = Math.Sin(twice);
            joint[den] = 1 - half - (half * joint[cos]);
            joint[ratio] = cosine / joint[den];
        }
        else
        {
            double c = 0;
            double s = 0;
            for (int i = 1; i <= j; i++)
            {
                double step = 2 * scale * i * angle[(from * Stride) + i];
                c -= step * joint[sin + j - i];
                s += step * joint[cos + j - i];
            }

            joint[cos + j] = c / j;
            joint[sin + j] = s / j;
            joint[den + j] = -half * joint[cos + j];
            double sum = 0;
            for (int i = 1; i <= j; i++)
            {
                sum += joint[den + i] * joint[ratio + j - i];
            }

            joint[ratio + j] = -sum / joint[den];
        }

        return Product(joint, ratio, speed, from * Stride, j);
    }

    /// <summary>Coefficient j of the torque in front of the joint, R(θ)·T; after the speed of the same coefficient.</summary>
    public double Torque(int l, int j, double[] torque) => Product(joint, ((l * 4) + 2) * Stride, torque, l * Stride, j);

    private static double Product(double[] a, int atA, double[] b, int atB, int j)
    {
        double sum = 0;
        for (int i = 0; i <= j; i++)
        {
            sum += a[atA + i] * b[atB + j - i];
        }

        return sum;
    }
}
