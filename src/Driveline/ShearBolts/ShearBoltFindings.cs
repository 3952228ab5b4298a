namespace Driveline.ShearBolts;

/// <summary>Codes of what shear bolts and their joints report.</summary>
public static class ShearBoltFindings
{
    /// <summary>Whether the plane cuts thread or shank is not known.</summary>
    public const string PlaneNotKnown = "shearPlaneNotKnown";

    /// <summary>The plane cuts the thread: weaker than the shank.</summary>
    public const string ThreadsInPlane = "threadsInShearPlane";

    /// <summary>The hub is seized: the joint may not let go.</summary>
    public const string HubSeized = "hubSeized";

    /// <summary>The hub drags by an amount nobody measured.</summary>
    public const string HubStiff = "hubStiff";

    /// <summary>Whether the hub turns freely is not known.</summary>
    public const string HubFreedomNotKnown = "hubFreedomNotKnown";

    /// <summary>A stated friction torque raises the high end.</summary>
    public const string FrictionRaisesHigh = "jointFrictionRaisesHigh";

    /// <summary>The bolt carries no mark or its material is not known.</summary>
    public const string BoltNotIdentified = "boltNotIdentified";

    /// <summary>The marks on the head do not belong to what the bolt is said to be. Parameters: stated, mark, grades.</summary>
    public const string MarksContradict = "boltMarksContradict";

    /// <summary>The material is known but nothing assures a maximum strength.</summary>
    public const string NoAssuredMaximum = "boltHasNoAssuredMaximum";

    /// <summary>The holes are worn: the bolts may part one by one.</summary>
    public const string HolesWorn = "boltHolesWorn";

    /// <summary>The fit of the holes is not known: taken as worn.</summary>
    public const string HoleFitNotKnown = "boltHoleFitNotKnown";

    /// <summary>The bolt is thinner than its hole by more than a loose fit leaves. Parameters: bolt, hole, widest.</summary>
    public const string LooseInHole = "boltLooseInHole";

    /// <summary>A gap between the faces bends the bolt.</summary>
    public const string StandOffBendsBolt = "standOffBendsBolt";

    /// <summary>The holes of yoke or shaft may oval before the bolt shears.</summary>
    public const string HolesOvalFirst = "holesOvalBeforeBoltShears";

    /// <summary>The hole for the bolt weakens its own shaft.</summary>
    public const string CrossHoleWeakensShaft = "crossHoleWeakensShaft";

    /// <summary>The hole takes more than half of the shaft: its strength is not computed.</summary>
    public const string CrossHoleTooLarge = "crossHoleTooLarge";

    /// <summary>The diameter of the neck, step or taper is not known.</summary>
    public const string NeckNotKnown = "neckDiameterNotKnown";

    /// <summary>The strength of a maker's special is not known.</summary>
    public const string SpecialStrengthNotKnown = "specialBoltStrengthNotKnown";

    /// <summary>A spring pin is known by its minimum only.</summary>
    public const string SpringPinNoMaximum = "springPinHasNoAssuredMaximum";

    /// <summary>Mild steel takes more under a blow than in a slow test.</summary>
    public const string FastLoading = "fastLoadingRaisesMildSteel";

    /// <summary>The work peak yields the bolt each time.</summary>
    public const string YieldsAtEachPeak = "boltYieldsAtEachPeak";

    /// <summary>The fatigue category holds for planes through the shank only.</summary>
    public const string FatigueThreadsInPlane = "boltFatigueThreadsInPlane";
}
