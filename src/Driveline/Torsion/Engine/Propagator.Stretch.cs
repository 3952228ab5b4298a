namespace Driveline.Torsion;

/// <content>Steps that grow twofold while nothing happens, and shrink where a bound allows an event or a peak.</content>
/// <remarks>
/// The fourth derivative of the state obeys the same equations without inputs, so that its energy norm never rises: it bounds
/// |T⁗| over any later time. What is stiff and has died away limits no step. Where the slope is proved of one sign the end of
/// the step is its largest value: the slope differs from that of the cubic by at most √3/216·max|T⁗| (per step).
/// </remarks>
internal sealed partial class Propagator
{
    private const int MostDoublings = 24;
    private const double SlopeError = 0.00801875373874480;

    private readonly double[][] phis = new double[MostDoublings + 1][];
    private readonly double[][] turneds = new double[MostDoublings + 1][];
    private readonly double[][] givens = new double[MostDoublings + 1][];
    private readonly double[][] grams = new double[MostDoublings + 1][];
    private readonly double[] rightEnd;
    private readonly double[] derivative;
    private readonly double[] nextDerivative;
    private int built;
    private int doublings;

    // True when a step was taken, at the largest length at which nothing can happen.
    private bool Stretch(Mechanism m, RunState x, Plan plan, RunLog log, EnergyMeter energy, double next)
    {
        double h = TransientLoop.Reach / plan.Rate;
        Load(x, plan);
        double norm = FourthNorm(m, plan);
        for (; doublings >= 0; doublings--)
        {
            double length = h * (1 << doublings);
            if (x.Time + length > next)
            {
                continue;
            }

            Use(m, plan, log, doublings);
            for (int n = 0; n < size; n++)
            {
                end[n] = Dot(phi, n * stride, z);
            }

            log.Work += stepWork / 2;
            if (IsQuiet(m, plan, log, norm, length, 1 << doublings))
            {
                Keep(log, x.Time + length);
                Energies(m, x, plan, energy);
                Store(x, plan);
                x.Time += length;
                log.Steps++;
                log.Work += stepWork;
                doublings = Math.Min(doublings + 1, MostDoublings);
                Use(m, plan, log, 0);
                return true;
            }
        }

        doublings = 0;
        Use(m, plan, log, 0);
        return false;
    }

    private void Use(Mechanism m, Plan plan, RunLog log, int level)
    {
        for (; built < level; built++)
        {
            phis[built + 1] ??= new double[phi.Length];
            turneds[built + 1] ??= new double[turned.Length];
            givens[built + 1] ??= new double[given.Length];
            grams[built + 1] ??= new double[gram.Length];
            Array.Copy(phis[built], phis[built + 1], phi.Length);
            Array.Copy(turneds[built], turneds[built + 1], turned.Length);
            Array.Copy(givens[built], givens[built + 1], given.Length);
            Array.Copy(grams[built], grams[built + 1], gram.Length);
            Take(built + 1);
            Double(m, plan);
            phis[built + 1] = phi;
            log.Work += DoubleWork(m);
        }

        Take(level);
    }

    private void Take(int level)
    {
        phi = phis[level];
        turned = turneds[level];
        given = givens[level];
        gram = grams[level];
    }

    private void Begin()
    {
        phis[0] = phi;
        turneds[0] = turned;
        givens[0] = given;
        grams[0] = gram;
        built = 0;
        doublings = 0;
    }

    private bool IsQuiet(Mechanism m, Plan plan, RunLog log, double norm, double length, double slopes)
    {
        double l4 = length * length * length * length;
        for (int n = 0; n < outputCount; n++)
        {
            int l = outputs[n];
            double left = Dot(value, n * stride, z);
            double leftSlope = slopes * Dot(slope, n * stride, z);
            double right = Dot(value, n * stride, end);
            double rightSlope = slopes * Dot(slope, n * stride, end);
            double bound = reaches[n] * norm * l4;
            double up = Polynomial.Upper(left, leftSlope, right, rightSlope, 1, bound);
            double down = Polynomial.Upper(-left, -leftSlope, -right, -rightSlope, 1, bound);
            if (up >= plan.Forward[l] || down >= plan.Reverse[l])
            {
                return false;
            }

            rightEnd[n] = right;
            double middle = (3 * (right - left)) - leftSlope - rightSlope;
            double error = SlopeError * bound;
            bool isMonotone = Math.Min(Math.Min(leftSlope, middle), rightSlope) > error
                || Math.Max(Math.Max(leftSlope, middle), rightSlope) < -error;
            if (!isMonotone && (up >= log.Most[l] || down >= log.Least[l]))
            {
                return false;
            }
        }

        return true;
    }

    private void Keep(RunLog log, double time)
    {
        for (int n = 0; n < outputCount; n++)
        {
            log.Reach(outputs[n], rightEnd[n], time);
        }
    }

    // √(ΣJ·u² + Σk·φ²) of the fourth derivative of speeds and twists.
    private double FourthNorm(Mechanism m, Plan plan)
    {
        double sum = 0;
        Array.Copy(z, derivative, size - 1);
        for (int order = 1; order <= 4; order++)
        {
            for (int i = 0; i < m.Rotors; i++)
            {
                net[i] = (order == 1 ? plan.Input[i] : 0) - (plan.Viscous[i] * derivative[i]);
            }

            for (int n = 0; n < plan.SpringCount; n++)
            {
                ref readonly Spring spring = ref plan.Springs[n];
                double d = derivative[spring.From] - (spring.To < 0 ? 0 : derivative[spring.To]);
                double torque = (spring.Stiffness * derivative[m.Rotors + n]) + (spring.Damping * d);
                nextDerivative[m.Rotors + n] = d;
                net[spring.From] -= torque;
                if (spring.To >= 0)
                {
                    net[spring.To] += torque;
                }

                sum += order == 4 ? spring.Stiffness * d * d : 0;
            }

            for (int i = 0; i < m.Rotors; i++)
            {
                sum += order == 4 ? net[i] * net[i] * plan.Inverse[i] : 0;
                nextDerivative[i] = net[i] * plan.Inverse[i];
            }

            Array.Copy(nextDerivative, derivative, size - 1);
        }

        return Math.Sqrt(sum);
    }
}
