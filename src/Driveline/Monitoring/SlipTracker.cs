using Driveline.Clutches;
using Driveline.Provenance;

namespace Driveline.Monitoring;

/// <summary>Slips of the device: angle and heat step by step, by the means of torque and slip speed over each step.</summary>
internal sealed class SlipTracker(MonitorSettings settings)
{
    private bool open;
    private bool atEngagement;
    private double startS;
    private double durationS;
    private double peakNm;
    private double angleRad;
    private double energyJ;
    private double peakFaceK;
    private double totalS;
    private double totalRad;
    private double totalJ;
    private long slips;
    private long inWork;

    public bool IsOpen => open;

    /// <summary>Heat of the last step, J.</summary>
    public double StepJ { get; private set; }

    public double StartS => startS;

    public double AngleRad => angleRad;

    public double EnergyJ => energyJ;

    public double TotalS => totalS;

    public double TotalRad => totalRad;

    public double TotalJ => totalJ;

    public long Slips => slips;

    public long InWork => inWork;

    public MonitorEvent Event(bool isCut) =>
        new(MonitorEventKind.Slip, startS, durationS, peakNm, angleRad, energyJ, peakFaceK, atEngagement, isCut);

    /// <summary>Takes a sample; true when a slip ended with it.</summary>
    /// <param name="sample">The sample.</param>
    /// <param name="before">The sample before.</param>
    /// <param name="slip">Slip speed now; NaN when not measured.</param>
    /// <param name="slipBefore">Slip speed before; NaN when not measured or after a pause.</param>
    /// <param name="stepS">Time between them.</param>
    /// <param name="engaging">True while the PTO is being engaged.</param>
    /// <param name="mayBegin">False while the device has let go.</param>
    public bool Step(in TorqueSample sample, in TorqueSample before, double slip, double slipBefore, double stepS,
        bool engaging, bool mayBegin)
    {
        StepJ = 0;
        return (open || (mayBegin && slip >= settings.SlipFromRadPerS))
            && Go(in sample, in before, slip, slipBefore, stepS, engaging);
    }

    /// <summary>Keeps the highest face temperature of the slip.</summary>
    public void Warm(double faceK) => peakFaceK = double.IsNaN(peakFaceK) || faceK > peakFaceK ? faceK : peakFaceK;

    /// <summary>Ends it at the last sample before a pause; true when it was open.</summary>
    public bool Cut() => open && End();

    /// <summary>Ends it without a slip being counted: it was the beginning of a trip.</summary>
    public void Forget() => open = false;

    public void Exchange(ref SnapshotCursor cursor)
    {
        cursor.Flag(ref open);
        cursor.Flag(ref atEngagement);
        cursor.Number(ref startS);
        cursor.Number(ref durationS);
        cursor.Number(ref peakNm);
        cursor.Number(ref angleRad);
        cursor.Number(ref energyJ);
        cursor.NumberOrNone(ref peakFaceK);
        cursor.Number(ref totalS);
        cursor.Number(ref totalRad);
        cursor.Number(ref totalJ);
        cursor.Count(ref slips);
        cursor.Count(ref inWork);
    }

    private bool Go(in TorqueSample sample, in TorqueSample before, double slip, double slipBefore, double stepS, bool engaging)
    {
        if (!open)
        {
            Begin(in sample, double.IsNaN(slipBefore) ? 0 : stepS, engaging);
        }

        peakNm = Math.Max(peakNm, sample.TorqueNm);
        double stepRad = (Math.Max(0, slip) + Math.Max(0, slipBefore)) / 2 * stepS;
        if (stepRad > 0)
        {
            NoSteps none = default;
            StepJ = SlipKernel.EnergyJ(Math.Max(0, (sample.TorqueNm + before.TorqueNm) / 2), stepRad, ref none);
            angleRad += stepRad;
            energyJ += StepJ;
            totalS += stepS;
            totalRad += stepRad;
            totalJ += StepJ;
        }

        durationS = sample.TimeS - startS;
        return slip >= settings.SlipUntilRadPerS ? false : End();
    }

    private void Begin(in TorqueSample sample, double stepS, bool engaging)
    {
        open = true;
        atEngagement = engaging;
        startS = sample.TimeS - stepS;
        durationS = 0;
        peakNm = sample.TorqueNm;
        angleRad = 0;
        energyJ = 0;
        peakFaceK = double.NaN;
    }

    private bool End()
    {
        open = false;
        slips++;
        inWork += atEngagement ? 0 : 1;
        return true;
    }
}
