using Driveline.Findings;
using Driveline.Quantities;

namespace Driveline.Protection;

/// <summary>How strict a check is. Immutable; the default asks for nothing beyond the bands themselves.</summary>
public sealed class ProtectionPolicy
{
    /// <summary>Margins of 1.0, a tolerance of 5 % for "same", and 25 hours of work for each break.</summary>
    public static readonly ProtectionPolicy Default = new(1.0, 1.0, 0.05, 25, []);

    private ProtectionPolicy(
        double minimumGuardMargin, double minimumWorkMargin, double sameWithin, double hoursPerBreak, IReadOnlyList<Caution> cautions)
    {
        Cautions = cautions;
        HoursPerBreak = hoursPerBreak;
        MinimumGuardMargin = minimumGuardMargin;
        MinimumWorkMargin = minimumWorkMargin;
        SameWithin = sameWithin;
    }

    /// <summary>The guard margin (weakest low over trip high) that must be exceeded for a Yes.</summary>
    public double MinimumGuardMargin { get; }

    /// <summary>The work margin (trip low over work peak high) that must be exceeded for a Yes.</summary>
    public double MinimumWorkMargin { get; }

    /// <summary>Fitted and specified count as the same when their expected trips differ by at most this share.</summary>
    public double SameWithin { get; }

    /// <summary>
    /// Hours of work between breaks, at least, of a protection that is quiet by experience: the upper 95 % bound of its rate is at most one
    /// in so many hours. With 25, 74.9 hours without a break are enough (−ln 0.05 = 2.9957).
    /// </summary>
    public double HoursPerBreak { get; }

    /// <summary>Cautions of the caller's own; they stand after the library's, which nothing takes away.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>The same policy with a caution more, such as the caller's word on liability.</summary>
    /// <exception cref="ArgumentNullException">The caution is missing.</exception>
    public ProtectionPolicy WithCaution(Caution caution) => new(
        MinimumGuardMargin, MinimumWorkMargin, SameWithin, HoursPerBreak, [.. Cautions, Guard.NotNull(caution, nameof(caution))]);

    /// <summary>The same policy with another guard margin; 1 to 10.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The margin is not from 1 to 10.</exception>
    public ProtectionPolicy WithMinimumGuardMargin(double margin) =>
        new(Guard.Within(margin, 1, 10, "Minimum guard margin", string.Empty, nameof(margin)), MinimumWorkMargin, SameWithin,
            HoursPerBreak, Cautions);

    /// <summary>The same policy with another work margin; 1 to 10.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The margin is not from 1 to 10.</exception>
    public ProtectionPolicy WithMinimumWorkMargin(double margin) =>
        new(MinimumGuardMargin, Guard.Within(margin, 1, 10, "Minimum work margin", string.Empty, nameof(margin)), SameWithin,
            HoursPerBreak, Cautions);

    /// <summary>The same policy with another tolerance for "same"; 0 to 0.5.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The share is not from 0 to 0.5.</exception>
    public ProtectionPolicy WithSameWithin(double share) =>
        new(MinimumGuardMargin, MinimumWorkMargin, Guard.Within(share, 0, 0.5, "Tolerance for 'same'", string.Empty, nameof(share)),
            HoursPerBreak, Cautions);

    /// <summary>The same policy with other hours of work between breaks; 1 to 10 000.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The hours are not from 1 to 10 000.</exception>
    public ProtectionPolicy WithHoursPerBreak(double hours) =>
        new(MinimumGuardMargin, MinimumWorkMargin, SameWithin, Guard.Within(hours, 1, 10_000, "Hours per break", "h", nameof(hours)),
            Cautions);
}
