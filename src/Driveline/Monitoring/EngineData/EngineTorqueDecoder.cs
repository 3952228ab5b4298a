using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Monitoring;

/// <summary>Makes samples of the PTO's speed and an upper bound of its torque from what engine and tractor say on the bus.</summary>
/// <remarks>
/// T = i · T_ref · (actual - friction - losses)/100, never below 0, with i engine speed over PTO speed, at most 6: no tractor gears its
/// rear PTO lower, so a PTO that turns slower is only being engaged. SAE J1939: engine speed SPN 190 and actual torque SPN 513 (PGN 61444),
/// nominal friction SPN 514 and losses SPN 2978 (PGN 65247), reference torque SPN 544 (PGN 65251, in several packets). ISO 11783-7:
/// speed SPN 1883 and engagement SPN 2408 of the rear PTO (PGN 65091). Friction or losses that are not known count as 0, which errs high.
/// An upper bound, because traction and hydraulics share the engine, and only of what the engine gives: a blow of milliseconds, the
/// ripple of the joints and what a flywheel gives back are not in it. One sample for each PGN 61444, with the PTO's state of the second
/// before. What is an error or not available gives a sample that is no number, which a monitor counts. The first engine that gives speed
/// and torque is listened to, no other. Settings of the monitor want <see cref="MonitorSettings.WithUpperBoundTorque"/>.
/// </remarks>
public sealed partial class EngineTorqueDecoder
{
    private const int EngineController = 61444;
    private const int EngineFriction = 65247;
    private const int RearPto = 65091;
    private const int Nobody = -1;
    private const double LongestPtoS = 1;
    private const double HighestRatio = 6;

    private readonly ReferenceTorqueTransport transport = new();
    private double statedNm;
    private double busNm = double.NaN;
    private double friction = double.NaN;
    private double losses = double.NaN;
    private double ptoRadPerS = double.NaN;
    private double ptoS = double.NaN;
    private bool ptoIsOff;
    private int engine = Nobody;
    private int heard = Nobody;
    private long withoutReference;
    private long withoutPto;
    private long errors;

    private EngineTorqueDecoder(double statedNm) => this.statedNm = statedNm;

    /// <summary>A decoder that has the reference torque from the bus only.</summary>
    public EngineTorqueDecoder()
        : this(double.NaN)
    {
    }

    /// <summary>A decoder with a stated reference torque; when the bus tells one too, the higher counts.</summary>
    /// <param name="reference">Reference torque of the engine; above 0 to 64 255 N·m.</param>
    /// <exception cref="ArgumentOutOfRangeException">The torque is out of its range.</exception>
    public EngineTorqueDecoder(Torque reference)
        : this(Guard.Within(Si.NewtonMeters(reference), 1e-9, 64255, "Reference torque", "N·m", nameof(reference)))
    {
    }

    /// <summary>The reference torque now; null while none is known.</summary>
    public Torque? Reference => ReferenceNm is var nm && double.IsNaN(nm) ? null : Torque.FromNewtonMeters(nm);

    /// <summary>Messages of the engine left out because no reference torque was known yet.</summary>
    public long WithoutReference => withoutReference;

    /// <summary>Messages of the engine left out because no state of the PTO was known, or it was more than a second old.</summary>
    public long WithoutPto => withoutPto;

    /// <summary>Parameters that said they were in error.</summary>
    public long Errors => errors;

    private double ReferenceNm => double.IsNaN(statedNm) ? busNm : busNm > statedNm ? busNm : statedNm;

    /// <summary>Takes a frame; true when it gives a sample. Frames of other groups are let go.</summary>
    /// <example>
    /// Actual 38 %, friction 13 %, losses 0, reference 800 N·m, engine 1605.5 rpm, PTO 540 rpm: 25 % of 800 N·m times 2.973, 594.6 N·m.
    /// </example>
    public bool TryTake(in CanFrame frame, out TorqueSample sample)
    {
        sample = default;
        if (!Guard.IsFinite(frame.TimeS))
        {
            return false;
        }

        switch (frame.ParameterGroup)
        {
            case EngineController:
                return TakeEngine(in frame, out sample);
            case EngineFriction when IsHeard(frame.Source):
                friction = Counted(frame.ByteAt(1));
                losses = frame.ByteAt(5) == BusValue.LossesInFriction ? 0 : Counted(frame.ByteAt(5));
                break;
            case RearPto:
                TakePto(in frame);
                break;
            case ReferenceTorqueTransport.Announcement:
                transport.Announce(in frame);
                break;
            case ReferenceTorqueTransport.Packet when transport.Take(in frame, out ushort raw) && IsHeard(frame.Source):
                errors += BusValue.IsError(raw) ? 1 : 0;
                double nm = BusValue.Nm(raw);
                busNm = nm > 0 ? nm : busNm;
                break;
            default:
                break;
        }

        return false;
    }

    /// <summary>The reference torque of the engine, with its unit.</summary>
    public override string ToString() => Reference is { } reference
        ? FormattableString.Invariant($"of {reference.NewtonMeters:G6} N·m")
        : "no reference torque";

    private bool TakeEngine(in CanFrame frame, out TorqueSample sample)
    {
        double actual = Counted(frame.ByteAt(3));
        double engineRadPerS = Counted(frame.WordAt(4));
        sample = default;
        if (engine == Nobody && !double.IsNaN(actual) && !double.IsNaN(engineRadPerS))
        {
            IsHeard(frame.Source);
            engine = frame.Source;
        }

        if (engine != Nobody && engine != frame.Source)
        {
            return false;
        }

        if (!(Math.Abs(frame.TimeS - ptoS) <= LongestPtoS))
        {
            withoutPto++;
            return false;
        }

        if (ptoIsOff)
        {
            sample = new TorqueSample(frame.TimeS, 0, 0);
            return true;
        }

        if (double.IsNaN(ReferenceNm))
        {
            withoutReference++;
            return false;
        }

        double ratio = Math.Min(HighestRatio, engineRadPerS / ptoRadPerS);
        double percent = actual - OrNone(friction) - OrNone(losses);
        sample = new TorqueSample(frame.TimeS, ptoRadPerS, Math.Max(0, ratio * ReferenceNm * percent / 100));
        return true;
    }

    private void TakePto(in CanFrame frame)
    {
        ptoRadPerS = Counted(frame.WordAt(1));
        ptoIsOff = frame.ByteAt(5) >> 6 == 0;
        ptoS = frame.TimeS;
    }

    // Before an engine is known, the last sender counts.
    private bool IsHeard(byte source)
    {
        if (engine != Nobody)
        {
            return engine == source;
        }

        if (heard != source)
        {
            heard = source;
            friction = double.NaN;
            losses = double.NaN;
            busNm = double.NaN;
        }

        return true;
    }

    private double Counted(byte raw)
    {
        errors += BusValue.IsError(raw) ? 1 : 0;
        return BusValue.Percent(raw);
    }

    private double Counted(ushort raw)
    {
        errors += BusValue.IsError(raw) ? 1 : 0;
        return BusValue.RadPerS(raw);
    }

    private static double OrNone(double percent) => percent > 0 ? percent : 0;
}
