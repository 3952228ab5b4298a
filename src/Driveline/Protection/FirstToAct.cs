using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Protection;

/// <summary>Which of several devices acts first under a rising torque that all of them carry.</summary>
/// <remarks>
/// P_k = ∫ f_k(t) · Π_{j≠k} P(T_j &gt; t) dt with independent trip torques at one place; a tie goes to the device named first.
/// The probabilities and that of none acting add to 1.
/// </remarks>
internal sealed class FirstToAct
{
    private FirstToAct(IReadOnlyList<Probability> devices, Probability none)
    {
        Devices = devices;
        None = none;
    }

    /// <summary>The probability of each device to act first, in the order given.</summary>
    public IReadOnlyList<Probability> Devices { get; }

    /// <summary>The probability that none acts, because every one of them may be without an upper bound.</summary>
    public Probability None { get; }

    /// <summary>Among devices whose trip torques are referred to one place.</summary>
    /// <exception cref="ArgumentException">No device is given.</exception>
    public static FirstToAct Among(params Distribution[] trips)
    {
        Guard.NotNull(trips, nameof(trips));
        if (trips.Length == 0)
        {
            throw new ArgumentException("At least one device is needed; got none.", nameof(trips));
        }

        Basis basis = Basis.Weakest(trips.Select(t => t.Basis));
        var first = new Probability[trips.Length];
        double none = 1;
        for (int k = 0; k < trips.Length; k++)
        {
            first[k] = new Probability(IsFirst(trips, k), basis);
            none *= trips[k].UnboundedShare;
        }

        return new FirstToAct(Array.AsReadOnly(first), new Probability(none, basis));
    }

    private static double IsFirst(Distribution[] trips, int index)
    {
        Distribution own = trips[index];
        double p = own.AtomShare > 0 ? own.AtomShare * OthersLater(trips, index, own.Atom) : 0;
        Interference.Points(own, trips, (t, weight) => p += weight * OthersLater(trips, index, t));
        return p;
    }

    private static double OthersLater(Distribution[] trips, int index, double torque)
    {
        double later = 1;
        for (int j = 0; j < trips.Length; j++)
        {
            if (j != index)
            {
                later *= j < index ? trips[j].Survival(torque) : trips[j].AtLeast(torque);
            }
        }

        return later;
    }
}
