using Driveline.Quantities;

namespace Driveline.Protection;

/// <summary>How strict a check is. Immutable; the default asks for nothing beyond the bands themselves.</summary>
public sealed class ProtectionPolicy
{
    /// <summary>Margins of 1.0 and a tolerance of 5 % for "same".</summary>
    public static readonly ProtectionPolicy Default = new(1.0, 1.0, 0.05);

    private ProtectionPolicy(double minimumGuardMargin, double minimumWorkMargin, double sameWithin)
    {
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

    /// <summary>The same policy with another guard margin; 1 to 10.</summary>
    public ProtectionPolicy WithMinimumGuardMargin(double margin) =>
        new(Guard.Within(margin, 1, 10, "Minimum guard margin", string.Empty, nameof(margin)), MinimumWorkMargin, SameWithin);

    /// <summary>The same policy with another work margin; 1 to 10.</summary>
    public ProtectionPolicy WithMinimumWorkMargin(double margin) =>
        new(MinimumGuardMargin, Guard.Within(margin, 1, 10, "Minimum work margin", string.Empty, nameof(margin)), SameWithin);

    /// <summary>The same policy with another tolerance for "same"; 0 to 0.5.</summary>
    public ProtectionPolicy WithSameWithin(double share) =>
        new(MinimumGuardMargin, MinimumWorkMargin, Guard.Within(share, 0, 0.5, "Tolerance for 'same'", string.Empty, nameof(share)));
}
