using Driveline.Cases.Members;
using Driveline.Quantities;

namespace Driveline.Cases;

public sealed partial class DrivelineElement
{
    /// <summary>What kind of element it is.</summary>
    public ElementKind Kind => Naming?.NamedKind ?? ElementKind.NotKnown;

    /// <summary>Its name; for a device its own name, null when it has none.</summary>
    public string? Name => Kind switch
    {
        ElementKind.ShearBolt => ShearBolt!.Name,
        ElementKind.SlipClutch => SlipClutch!.Name,
        ElementKind.CutOut => CutOut!.Name,
        _ => Naming is { } member ? Reference<string>(member) : null,
    };

    /// <summary>True when the element may state a limit: all but a protective device and a branch.</summary>
    public bool IsPart => ElementMembers.DamagedAt.AppliesTo(Kind);

    /// <summary>The statement of the limit that is used: the torque stated outright, else geometry with material, else the rating with its factor.</summary>
    public LimitSource LimitUsed => LimitsStated.Count > 0 ? LimitsStated[0] : LimitSource.NotKnown;

    /// <summary>Every complete statement of the limit, the one that is used first.</summary>
    public IReadOnlyList<LimitSource> LimitsStated
    {
        get
        {
            var stated = new List<LimitSource>();
            if (DamagedAt is not null)
            {
                stated.Add(LimitSource.DamagedAt);
            }

            if ((OuterDiameter is not null || SplineRootDiameter is not null) && (YieldStrength is not null || Material is not null))
            {
                stated.Add(LimitSource.Geometry);
            }

            if (RatedTorque is not null && OverloadFactor is not null)
            {
                stated.Add(LimitSource.RatedTorque);
            }

            return stated;
        }
    }

    private Member? Naming => ElementMembers.Table.Members.FirstOrDefault(m => m.NamedKind != ElementKind.NotKnown && this[m] is not null);

    /// <summary>An element of a kind that is known by a name.</summary>
    /// <param name="kind">Any kind but a shear bolt, a slip clutch, a cut-out clutch and a branch, which have factories of their own.</param>
    /// <param name="name">Its name; 1 to 200 characters.</param>
    /// <exception cref="ArgumentOutOfRangeException">The kind has a factory of its own or is NotKnown, or the name is too long.</exception>
    public static DrivelineElement Named(ElementKind kind, string name)
    {
        if (kind is ElementKind.ShearBolt or ElementKind.SlipClutch or ElementKind.CutOut or ElementKind.Branch)
        {
            throw new ArgumentOutOfRangeException(nameof(kind), kind, "A shear bolt is made by OfShearBolt, a clutch by OfSlipClutch or OfCutOut, a branch by OfBranch.");
        }

        return Of(kind, Guard.NotBlank(name, "Name", nameof(name)));
    }

    /// <summary>A shear-bolt joint.</summary>
    public static DrivelineElement OfShearBolt(ShearBoltFacts shearBolt) =>
        Of(ElementKind.ShearBolt, Guard.NotNull(shearBolt, nameof(shearBolt)));

    /// <summary>A friction-disc slip clutch.</summary>
    public static DrivelineElement OfSlipClutch(SlipClutchFacts slipClutch) =>
        Of(ElementKind.SlipClutch, Guard.NotNull(slipClutch, nameof(slipClutch)));

    /// <summary>A ratchet, cam or radial-pin clutch that cuts out.</summary>
    public static DrivelineElement OfCutOut(CutOutFacts cutOut) =>
        Of(ElementKind.CutOut, Guard.NotNull(cutOut, nameof(cutOut)));

    /// <summary>A side drive.</summary>
    /// <param name="name">Its name; 1 to 200 characters.</param>
    /// <param name="powerShare">Share of the power that it takes; above 0, up to 1.</param>
    /// <param name="driveline">Its elements, in order from where it leaves.</param>
    public static DrivelineElement OfBranch(string name, RatioBand powerShare, IEnumerable<DrivelineElement> driveline) =>
        Of(ElementKind.Branch, Guard.NotBlank(name, "Name", nameof(name)))
            .WithPowerShare(Guard.NotNull(powerShare, nameof(powerShare)))
            .WithDriveline(driveline);

    private static DrivelineElement Of(ElementKind kind, object value)
    {
        Member member = ElementMembers.Table.Members.FirstOrDefault(m => m.NamedKind == kind && kind != ElementKind.NotKnown)
            ?? throw new ArgumentOutOfRangeException(nameof(kind), kind, "An element needs a known kind.");
        member.Check(value);
        object?[] values = ElementMembers.Table.NoValues();
        values[member.Slot] = value;
        return new DrivelineElement(values);
    }
}
