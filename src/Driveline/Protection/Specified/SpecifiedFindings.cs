namespace Driveline.Protection;

/// <summary>Codes of what speaks for and against a device being what the manual names, in working order.</summary>
public static class SpecifiedFindings
{
    /// <summary>The manual names a shear bolt, and none is in the list.</summary>
    public const string BoltNotListed = "specified.boltNotListed";

    /// <summary>The manual names the torque or the springs of a clutch, and none is in the list.</summary>
    public const string ClutchNotListed = "specified.clutchNotListed";

    /// <summary>It has the size the manual names.</summary>
    public const string Size = "specified.size";

    /// <summary>It has another size than the manual names.</summary>
    public const string OtherSize = "specified.otherSize";

    /// <summary>It is of the grade or material the manual names.</summary>
    public const string Grade = "specified.grade";

    /// <summary>It is of another grade or material than the manual names.</summary>
    public const string OtherGrade = "specified.otherGrade";

    /// <summary>Whether it is of the grade or material the manual names is not known.</summary>
    public const string GradeNotKnown = "specified.gradeNotKnown";

    /// <summary>It has no marks, as the grade that the manual names has none; so has any bolt without a grade.</summary>
    public const string UnmarkedAsNamed = "specified.unmarkedAsNamed";

    /// <summary>It is the maker's own part by its number.</summary>
    public const string PartNumber = "specified.partNumber";

    /// <summary>Its number is another than the manual's; a maker may have replaced the number.</summary>
    public const string OtherPartNumber = "specified.otherPartNumber";

    /// <summary>It is known what the shear plane passes through, and the manual names nothing else.</summary>
    public const string Plane = "specified.plane";

    /// <summary>The shear plane passes through something else than the manual names.</summary>
    public const string OtherPlane = "specified.otherPlane";

    /// <summary>Its torque is the one the manual names.</summary>
    public const string Torque = "specified.torque";

    /// <summary>Its torque is another than the manual names.</summary>
    public const string OtherTorque = "specified.otherTorque";

    /// <summary>Its springs have the length the manual names.</summary>
    public const string SpringLength = "specified.springLength";

    /// <summary>Its springs have another length than the manual names.</summary>
    public const string OtherSpringLength = "specified.otherSpringLength";

    /// <summary>Neither a measured torque nor a spring length can be compared with the manual.</summary>
    public const string SettingNotKnown = "specified.settingNotKnown";

    /// <summary>The hub turns on its shaft.</summary>
    public const string HubTurns = "specified.hubTurns";

    /// <summary>The holes are round.</summary>
    public const string HolesRound = "specified.holesRound";

    /// <summary>Whether the holes are round is not known.</summary>
    public const string HolesNotKnown = "specified.holesNotKnown";

    /// <summary>It slipped in a test that counts.</summary>
    public const string SlipTested = "specified.slipTested";

    /// <summary>Whether it is in working order is not known.</summary>
    public const string OrderNotKnown = "specified.orderNotKnown";
}
