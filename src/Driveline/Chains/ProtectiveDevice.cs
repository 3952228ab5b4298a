using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Chains;

/// <summary>A device that should act before a part is damaged. Torques are at its own position.</summary>
/// <remarks>
/// <see cref="Breakaway"/> answers whether it guards, <see cref="Running"/> whether it stays quiet: a clutch that has stood
/// breaks away later than it slips, a hot one slips earlier. For a bolt the two are the same.
/// </remarks>
public abstract class ProtectiveDevice : Element
{
    private static readonly Dictionary<string, BandBasis> NoBases = [];

    private IReadOnlyList<Finding>? guardBars;
    private IReadOnlyList<Finding>? quietBars;

    private protected ProtectiveDevice(string name)
        : base(name)
    {
    }

    /// <summary>What it is.</summary>
    public abstract DeviceKind Kind { get; }

    /// <summary>The torque at which it first acts after standing; null when nothing is known.</summary>
    public abstract TorqueBand? Breakaway { get; }

    /// <summary>The torque at which it acts in running work; null when nothing is known.</summary>
    public abstract TorqueBand? Running { get; }

    /// <summary>What it does once it has acted.</summary>
    public abstract AfterTrip AfterTrip { get; }

    /// <summary>What its own calculation has to say.</summary>
    public abstract IReadOnlyList<Finding> Findings { get; }

    /// <summary>Why its guard cannot be a Yes, whatever the numbers: each is a fact not known or a state not proven.</summary>
    public IReadOnlyList<Finding> GuardBars => guardBars ??= Barring(Bars.Guards);

    /// <summary>Why it cannot be called quiet with a Yes, whatever the numbers.</summary>
    public IReadOnlyList<Finding> QuietBars => quietBars ??= Barring(Bars.Quiet);

    /// <summary>The machine maker's number for it, as it stands on its bag or in the parts list; null when not known.</summary>
    public string? PartNumber { get; private set; }

    /// <summary>The same device with the machine maker's number for it.</summary>
    internal ProtectiveDevice Numbered(string? number)
    {
        if (number is null)
        {
            return this;
        }

        var copy = (ProtectiveDevice)MemberwiseClone();
        copy.PartNumber = number;
        return copy;
    }

    /// <summary>What bars a quiet Yes under work peaks up to so much, beside <see cref="QuietBars"/>.</summary>
    internal virtual IReadOnlyList<Finding> BarsUnder(double workHighNm) => [];

    /// <summary>
    /// The torque at which it acts when free and in good order, for comparison with what the manual specifies; null when not known.
    /// </summary>
    public virtual TorqueBand? InGoodOrder => Running;

    /// <summary>True when it is known what it is, so that a comparison with the specified one has a meaning.</summary>
    public virtual bool IsIdentified => Breakaway is not null;

    /// <summary>True when an unbounded expected torque is the device's state (stuck, springs solid), not a lack of knowledge.</summary>
    public virtual bool IsStuck => false;

    /// <summary>
    /// True when the device is stated never to let go, whatever the torque: it counts as no device for what it should guard.
    /// </summary>
    public virtual bool NeverLetsGo => false;

    /// <summary>True when acting while the PTO is engaged is its job and it is known to stand the heat; then that is no nuisance.</summary>
    public virtual bool StandsEngagement => false;

    /// <summary>Parts that exist because of the device, such as the shaft at its cross-hole.</summary>
    public virtual IReadOnlyList<Part> ImpliedParts => [];

    /// <summary>The calculation of its torque, line by line; empty when it is not calculated.</summary>
    public virtual IReadOnlyList<CalculationLine> Sheet() => [];

    /// <summary>Where the numbers that its sheet begins with come from, by the code of their step.</summary>
    public virtual IReadOnlyDictionary<string, BandBasis> SheetBases() => NoBases;

    /// <summary>Takes what bars its Yes from another that differs in nothing that bars one.</summary>
    private protected void ShareBars(ProtectiveDevice other)
    {
        guardBars = other.GuardBars;
        quietBars = other.QuietBars;
    }

    /// <summary>
    /// Where the doubt about its torque comes from, from the lowest at which it acts in work to the highest that it first needs: the widest
    /// source first. Worked out anew at each call; empty when no torque is known.
    /// </summary>
    public virtual IReadOnlyList<TorqueDoubt> Doubts() => Breakaway is { } first && Running is { } running
        ? TorqueDoubt.Ranked(
        [
            TorqueDoubt.Of(
                DoubtCodes.Stated,
                running.SiBand.Low > 0 ? first.SiBand.High / running.SiBand.Low : double.PositiveInfinity,
                BandBasis.Combine(running.Basis, first.Basis),
                Measurements.IdentifyDevice),
        ])
        : [];

    // Most devices have one finding or two: a list of their own is made only of those that bar.
    private IReadOnlyList<Finding> Barring(Bars questions)
    {
        IReadOnlyList<Finding> all = Findings;
        List<Finding>? barring = null;
        for (int k = 0; k < all.Count; k++)
        {
            if (all[k].IsBarring(questions))
            {
                (barring ??= []).Add(all[k]);
            }
        }

        return barring is null ? [] : [.. barring];
    }
}
