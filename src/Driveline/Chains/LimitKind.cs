namespace Driveline.Chains;

/// <summary>How the limit of a part was found.</summary>
internal enum LimitKind
{
    /// <summary>Rated torque times an overload factor without a source: never gives a Yes or a No.</summary>
    UnsourcedOverloadFactor = 0,

    /// <summary>From the type of PTO with a default steel: never gives a Yes or a No.</summary>
    ImpliedByPtoType,

    /// <summary>Rated torque times an overload factor with a source.</summary>
    OverloadFactor,

    /// <summary>From geometry and a stated material.</summary>
    Section,

    /// <summary>A stated or measured damage torque.</summary>
    DamageTorque,

    /// <summary>Rated torque alone: the part takes at least that; what it takes beyond nobody says.</summary>
    Rating,
}
