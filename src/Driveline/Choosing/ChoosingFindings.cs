namespace Driveline.Choosing;

/// <summary>Codes of what choosing reports. They never change their meaning.</summary>
public static class ChoosingFindings
{
    /// <summary>No shear-bolt joint is known well enough to choose a bolt for it.</summary>
    public const string NoKnownJoint = "choosing.noKnownJoint";

    /// <summary>The driveline has no shear bolt; its clutches are chosen for alone.</summary>
    public const string NoBolt = "choosing.noBolt";

    /// <summary>No part's damage torque is known: nothing is offered.</summary>
    public const string LimitsNotKnown = "choosing.limitsNotKnown";

    /// <summary>A part's limit is not known: bolts that may be stronger than what is fitted or specified are left out.</summary>
    public const string StrongerWithheldByPart = "choosing.strongerWithheld.part";

    /// <summary>The list of parts is not complete: bolts that may be stronger than what is fitted or specified are left out.</summary>
    public const string StrongerWithheldByList = "choosing.strongerWithheld.list";

    /// <summary>
    /// Nobody knows what the joint may hold at most: bolts that may be stronger than what is fitted or specified are left out.
    /// </summary>
    public const string StrongerWithheldByTrip = "choosing.strongerWithheld.trip";

    /// <summary>No bolt of the stock goes through a permitted hole.</summary>
    public const string NoneInHole = "choosing.noneInHole";

    /// <summary>No offered bolt both guards and stays quiet over its whole band.</summary>
    public const string NothingFits = "choosing.nothingFits";

    /// <summary>Nobody knows what any offered bolt may hold at most: none is sure to guard.</summary>
    public const string NothingGuards = "choosing.nothingGuards";

    /// <summary>The torque of normal work is not known: bolts are ranked by the guard alone.</summary>
    public const string RankedByGuardAlone = "choosing.rankedByGuardAlone";

    /// <summary>A smaller bolt of a better-bounded grade would leave more room.</summary>
    public const string SmallerBetterBounded = "choosing.smallerBetterBounded";

    /// <summary>The fitted bolt is not the specified one: the specified comes first.</summary>
    public const string SpecifiedFirst = "choosing.specifiedFirst";

    /// <summary>Nobody has stated which bolt the manual names.</summary>
    public const string ManualsNotStated = "choosing.manualsNotStated";

    /// <summary>The stock does not have the bolt that the manual names.</summary>
    public const string ManualsNotInStock = "choosing.manualsNotInStock";

    /// <summary>Bolts leave room, but each is stronger than the manual's, or nobody knows that it is not.</summary>
    public const string RoomNeedsConsent = "choosing.roomNeedsConsent";

    /// <summary>Left out: it is loose in its hole.</summary>
    public const string LeftOutLoose = "choosing.leftOut.loose";

    /// <summary>Left out: it fits no permitted hole.</summary>
    public const string LeftOutHole = "choosing.leftOut.hole";

    /// <summary>Left out: it may hold more than what is fitted or specified, and not every limit is known.</summary>
    public const string LeftOutMayBeStronger = "choosing.leftOut.mayBeStronger";

    /// <summary>Left out: no part's limit is known.</summary>
    public const string LeftOutLimitsNotKnown = "choosing.leftOut.limitsNotKnown";

    /// <summary>Left out: a pin or rod of which nothing assures how strong it is at most.</summary>
    public const string LeftOutNoUpperEnd = "choosing.leftOut.noUpperEnd";

    /// <summary>A row of a stock file: a pin of no material that is held.</summary>
    public const string RowPin = "choosing.row.pin";

    /// <summary>A row of a stock file: its size is not understood.</summary>
    public const string RowSize = "choosing.row.size";

    /// <summary>A row of a stock file: its grade is not understood.</summary>
    public const string RowGrade = "choosing.row.grade";

    /// <summary>A row of a stock file: the standard of its grade does not hold its size.</summary>
    public const string RowGradeNotAtSize = "choosing.row.gradeNotAtSize";

    /// <summary>A row of a stock file: its length is not understood.</summary>
    public const string RowLength = "choosing.row.length";

    /// <summary>A row of a stock file: its price is not understood.</summary>
    public const string RowPrice = "choosing.row.price";

    /// <summary>What would change it: engaging the PTO gently.</summary>
    public const string ChangeEngagement = "choosing.change.engagement";

    /// <summary>What would change it: less power, or lighter work.</summary>
    public const string ChangePower = "choosing.change.power";

    /// <summary>What would change it: a hub that turns freely.</summary>
    public const string ChangeHub = "choosing.change.hub";

    /// <summary>What would change it: the device before an element.</summary>
    public const string ChangePositionBefore = "choosing.change.positionBefore";

    /// <summary>What would change it: the device behind an element.</summary>
    public const string ChangePositionBehind = "choosing.change.positionBehind";

    /// <summary>What would change it: the bolt at another radius.</summary>
    public const string ChangeRadius = "choosing.change.radius";

    /// <summary>What would change it: another part, or its limit known better.</summary>
    public const string ChangePart = "choosing.change.part";

    /// <summary>No spring setting of this clutch both guards and stays quiet.</summary>
    public const string NoSetting = "choosing.noSetting";

    /// <summary>No spring setting is known to guard and to stay quiet: a margin of the best one is not known.</summary>
    public const string NoSettingNotKnown = "choosing.noSettingNotKnown";

    /// <summary>A part's limit is not known: no setting is offered.</summary>
    public const string SettingNeedsPart = "choosing.settingNeeds.part";

    /// <summary>The list of parts is not complete: no setting is offered.</summary>
    public const string SettingNeedsList = "choosing.settingNeeds.list";

    /// <summary>The clutch is stuck: no setting is offered before it is free.</summary>
    public const string SettingNeedsFreeClutch = "choosing.settingNeeds.freeClutch";

    /// <summary>Oil or grease on the linings: clean or replace them before any setting.</summary>
    public const string MendOiled = "choosing.mend.oiled";

    /// <summary>Glazed linings: mend them before any setting.</summary>
    public const string MendGlazed = "choosing.mend.glazed";

    /// <summary>The clutch slips so often that it gets too hot: find the cause before any setting.</summary>
    public const string MendTooHot = "choosing.mend.tooHot";

    /// <summary>The springs are, or may be, pressed solid: put that right before any setting.</summary>
    public const string MendSolid = "choosing.mend.solid";

    /// <summary>What ends the settings is what the linings may be pressed with.</summary>
    public const string LiningsLimit = "choosing.liningsLimit";

    /// <summary>The faces and springs of the clutch are not all known: no setting is offered.</summary>
    public const string SettingNeedsClutch = "choosing.settingNeeds.clutch";

    /// <summary>The torque of normal work has no known bound: no lowest setting can be found.</summary>
    public const string SettingNeedsWork = "choosing.settingNeeds.work";

    /// <summary>The window holds only once the clutch, so set, has been slipped.</summary>
    public const string SlipAfterSetting = "choosing.slipAfterSetting";

    /// <summary>The window lies away from what the manual specifies, or nobody knows that it does not.</summary>
    public const string SettingNotTheManuals = "choosing.settingNotTheManuals";

    /// <summary>What would change it: stronger springs.</summary>
    public const string ChangeSprings = "choosing.change.springs";

    /// <summary>What would change it: clean, dry, run-in faces.</summary>
    public const string ChangeFaces = "choosing.change.faces";
}
