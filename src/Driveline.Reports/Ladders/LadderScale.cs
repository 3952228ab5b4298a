namespace Driveline.Reports.Ladders;

/// <summary>The torque axis of the picture: from 0 to a little beyond what matters.</summary>
internal sealed class LadderScale
{
    // A bar this many times beyond work, device and weakest part would squeeze them together: it is cut and marked.
    private const double FarBeyond = 4;

    private readonly double left;
    private readonly double right;

    public LadderScale(IReadOnlyList<LadderRow> rows, double left, double right)
    {
        this.left = left;
        this.right = right;
        double[] known = [.. rows.SelectMany(r => r.Known).Where(v => v > 0)];
        HasTorque = known.Length > 0;
        if (!HasTorque)
        {
            return;
        }

        double most = known.Max();
        double[] focus =
            [.. rows.Where(r => r.Kind is LadderRowKind.Work or LadderRowKind.Engagement or LadderRowKind.Device).SelectMany(r => r.Known)];
        double[] parts = [.. rows.Where(r => r.Kind == LadderRowKind.Part && r.IsKnown).Select(r => r.Known.Max())];
        double middle = Math.Max(focus.DefaultIfEmpty(0).Max(), parts.DefaultIfEmpty(0).Min());
        bool isOpen = rows.Any(r => r.IsKnown && double.IsPositiveInfinity(r.High));
        To = (middle > 0 && most > FarBeyond * middle ? middle * FarBeyond * 0.6 : most) * (isOpen ? 1.2 : 1.06);
        Step = NiceStep(To / 6);
    }

    /// <summary>False when no torque is known: there is no axis to draw.</summary>
    public bool HasTorque { get; }

    /// <summary>Right end, in the unit shown.</summary>
    public double To { get; }

    /// <summary>Distance of the ticks.</summary>
    public double Step { get; }

    /// <summary>The ticks.</summary>
    public IEnumerable<double> Ticks => Enumerable.Range(0, 40).Select(k => k * Step).TakeWhile(v => v <= To * 1.0001);

    /// <summary>True when a torque lies beyond the right end.</summary>
    public bool IsBeyond(double torque) => torque > To;

    /// <summary>Place of a torque, never beyond the right end.</summary>
    public double X(double torque) => left + ((right - left) * Math.Min(1, torque / To));

    private static double NiceStep(double rough)
    {
        double power = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        double lead = rough / power;
        return power * (lead <= 1 ? 1 : lead <= 2 ? 2 : lead <= 2.5 ? 2.5 : lead <= 5 ? 5 : 10);
    }
}
