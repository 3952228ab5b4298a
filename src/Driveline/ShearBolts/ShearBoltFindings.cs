namespace Driveline.ShearBolts;

/// <summary>Codes of what shear bolts and their joints report.</summary>
public static class ShearBoltFindings
{
    /// <summary>Whether the plane cuts thread or shank is not known.</summary>
    public const string PlaneNotKnown = "bolt.shearPlaneNotKnown";

    /// <summary>The plane cuts the thread: weaker than the shank.</summary>
    public const string ThreadsInPlane = "bolt.threadsInShearPlane";

    /// <summary>The plane cuts the thread of a bolt thinner than any that was tested so. Parameter: smallest.</summary>
    public const string ThreadShareExtrapolated = "bolt.threadShareExtrapolated";

    /// <summary>The hub is seized: the joint may not let go.</summary>
    public const string HubSeized = "bolt.hubSeized";

    /// <summary>The hub drags by an amount nobody measured.</summary>
    public const string HubStiff = "bolt.hubStiff";

    /// <summary>Whether the hub turns freely is not known.</summary>
    public const string HubFreedomNotKnown = "bolt.hubFreedomNotKnown";

    /// <summary>The hub was last seen to turn more than 12 months ago, or an unknown time ago. Parameter: seen.</summary>
    public const string HubFreedomTooOld = "bolt.hubFreedomTooOld";

    /// <summary>A stated friction torque raises the high end.</summary>
    public const string FrictionRaisesHigh = "bolt.jointFrictionRaisesHigh";

    /// <summary>The bolt carries no mark or its material is not known.</summary>
    public const string BoltNotIdentified = "bolt.notIdentified";

    /// <summary>The marks on the head do not belong to what the bolt is said to be. Parameters: stated, mark, grades.</summary>
    public const string MarksContradict = "bolt.marksContradict";

    /// <summary>Facts told of the joint contradict each other. Parameters: name, fact, other.</summary>
    public const string FactsContradict = "bolt.factsContradict";

    /// <summary>The material is known but nothing assures a maximum strength.</summary>
    public const string NoAssuredMaximum = "bolt.hasNoAssuredMaximum";

    /// <summary>The holes are worn: the bolts may part one by one.</summary>
    public const string HolesWorn = "bolt.holesWorn";

    /// <summary>The fit of the holes is not known: taken as worn.</summary>
    public const string HoleFitNotKnown = "bolt.holeFitNotKnown";

    /// <summary>The bolt is thinner than its hole by more than a loose fit leaves. Parameters: bolt, hole, widest.</summary>
    public const string LooseInHole = "bolt.looseInHole";

    /// <summary>The hole of a single bolt is worn: the bolt rocks in it.</summary>
    public const string HoleWornAroundBolt = "bolt.holeWornAround";

    /// <summary>A gap, a worn hole or play lets the halves move on each other, which tires the bolt.</summary>
    public const string FacesMayMove = "bolt.facesMayMove";

    /// <summary>The bolt stands out of the hub beyond its nut. Parameter: protrusion.</summary>
    public const string BoltStandsProud = "bolt.standsProud";

    /// <summary>A gap between the faces bends the bolt.</summary>
    public const string StandOffBendsBolt = "bolt.standOffBendsBolt";

    /// <summary>The holes of yoke or shaft may oval before the bolt shears.</summary>
    public const string HolesOvalFirst = "bolt.holesOvalBeforeBoltShears";

    /// <summary>The holes go oval under peaks of normal work. Parameters: oval, work.</summary>
    public const string HolesOvalInWork = "bolt.holesOvalInWork";

    /// <summary>The hole for the bolt weakens its own shaft.</summary>
    public const string CrossHoleWeakensShaft = "bolt.crossHoleWeakensShaft";

    /// <summary>The hole takes more than half of the shaft: its strength is not computed.</summary>
    public const string CrossHoleTooLarge = "bolt.crossHoleTooLarge";

    /// <summary>The diameter of the neck, step or taper is not known.</summary>
    public const string NeckNotKnown = "bolt.neckDiameterNotKnown";

    /// <summary>Neither the diameter of the neck, step or taper nor a greatest strength is known.</summary>
    public const string NeckAndStrengthNotKnown = "bolt.neckAndStrengthNotKnown";

    /// <summary>The strength of a maker's special is not known.</summary>
    public const string SpecialStrengthNotKnown = "bolt.specialStrengthNotKnown";

    /// <summary>A spring pin is known by its minimum only.</summary>
    public const string SpringPinNoMaximum = "bolt.springPinHasNoAssuredMaximum";

    /// <summary>Mild steel takes more under a blow than in a slow test.</summary>
    public const string FastLoading = "bolt.fastLoadingRaisesMildSteel";

    /// <summary>The work peak yields the bolt each time.</summary>
    public const string YieldsAtEachPeak = "bolt.yieldsAtEachPeak";

    /// <summary>The fatigue category holds for planes through the shank only.</summary>
    public const string FatigueThreadsInPlane = "bolt.fatigueThreadsInPlane";
}
