using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Advice;

/// <summary>What a remedy costs: its time at the owner's worth of an hour, and the bolt where one is fitted.</summary>
/// <remarks>
/// C = f · min/60 · w + bolt, with f from one half over 1 to 2, because nobody has timed these jobs (from memory). A habit costs nothing.
/// A price nobody stated leaves the high end open; an hour nobody priced leaves the whole cost open.
/// </remarks>
internal static class RemedyCost
{
    private const double Quick = 0.5;
    private const double Slow = 2;
    private static readonly Basis Minutes = Basis.FromMemory("minutes of a remedy, half to double; nobody has timed it");

    /// <summary>The cost; null when nothing is known of it.</summary>
    /// <example>60 minutes at 40 an hour and a bolt at 3: 23, 43, 83.</example>
    public static MoneyBand? Of(RemedySpending spending, double? minutes, MoneyBand? hourOfWork, MoneyBand? boltPrice)
    {
        if (spending == RemedySpending.Nothing)
        {
            return MoneyBand.Nothing;
        }

        if (spending == RemedySpending.NotKnown || minutes is not { } m || hourOfWork is null)
        {
            return null;
        }

        Band hour = hourOfWork.SiBand;
        var work = new Band(Quick * m / 60 * hour.Low, m / 60 * hour.Expected, Slow * m / 60 * hour.High);
        Basis basis = Basis.Weakest(Minutes, hourOfWork.WeakestBasis);
        switch (spending)
        {
            case RemedySpending.Work:
                return MoneyBand.OfSi(work, BandBasis.Of(basis));
            case RemedySpending.WorkAndBolt when boltPrice is { SiBand: var bolt }:
                return MoneyBand.OfSi(
                    new Band(work.Low + bolt.Low, work.Expected + bolt.Expected, work.High + bolt.High),
                    BandBasis.Of(Basis.Weakest(basis, boltPrice.WeakestBasis)));
            default:
                return MoneyBand.AtLeast(work.Low, basis);
        }
    }
}
