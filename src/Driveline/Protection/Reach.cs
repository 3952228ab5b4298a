using Driveline.Quantities;

namespace Driveline.Protection;

/// <summary>The highest torque that can reach a position before a device acts, and what that rests on.</summary>
internal struct Reach
{
    /// <summary>Nothing acts: any torque may reach the position.</summary>
    public static readonly Reach Open = new()
    {
        Band = new Band(0, double.PositiveInfinity, double.PositiveInfinity),
        IsOpen = true,
        Device = -1,
        Inertia = -1,
    };

    /// <summary>The torque at which the first device acts, at the position in question.</summary>
    public Band Band;

    /// <summary>True when no device acts here at all.</summary>
    public bool IsOpen;

    /// <summary>True when one of the devices that might act first is not known.</summary>
    public bool HasUnknown;

    /// <summary>True when a device's expected torque is not known, so that it may act earlier than the bands say.</summary>
    public bool MayActEarlier;

    /// <summary>True when the high end rests on a device or referral that bars a Yes.</summary>
    public bool IsBarred;

    /// <summary>True when the high end looks safe only through an efficiency nobody stated.</summary>
    public bool RestsOnEfficiency;

    /// <summary>Node index of the flywheel or rotor whose energy reaches the position past the device; -1 when none.</summary>
    public int Inertia;

    /// <summary>Node index of the device expected to act first; -1 when none.</summary>
    public int Device;

    /// <summary>True when stored energy reaches the position past the device, which then guards nothing there.</summary>
    public readonly bool PassesInertia => Inertia >= 0;

    /// <summary>The first of two devices to act, end by end; what bars a Yes comes from the one that sets the high end.</summary>
    /// <remarks>One that stored energy passes by counts only where no other stands: it holds back the tractor, not the energy.</remarks>
    public static Reach First(in Reach a, in Reach b)
    {
        if (a.IsOpen)
        {
            return b;
        }

        if (b.IsOpen)
        {
            return a;
        }

        if (a.PassesInertia != b.PassesInertia)
        {
            return a.PassesInertia ? b : a;
        }

        Reach first = b.Band.High < a.Band.High || (b.Band.High.Equals(a.Band.High) && a.IsBarred) ? b : a;
        first.Device = b.Band.Expected < a.Band.Expected ? b.Device : a.Device;
        first.HasUnknown = a.HasUnknown || b.HasUnknown;
        first.MayActEarlier = a.MayActEarlier || b.MayActEarlier;
        first.Band = Band.Min(a.Band, b.Band);
        return first;
    }

    /// <summary>Two branches that can load one shaft at once.</summary>
    public static Reach Both(in Reach a, in Reach b)
    {
        if (a.IsOpen || b.IsOpen)
        {
            return Open;
        }

        return new Reach
        {
            Band = a.Band + b.Band,
            HasUnknown = a.HasUnknown || b.HasUnknown,
            MayActEarlier = a.MayActEarlier || b.MayActEarlier,
            IsBarred = a.IsBarred || b.IsBarred,
            RestsOnEfficiency = a.RestsOnEfficiency || b.RestsOnEfficiency,
            Inertia = Math.Max(a.Inertia, b.Inertia),
            Device = a.Band.Expected <= b.Band.Expected ? a.Device : b.Device,
        };
    }
}
