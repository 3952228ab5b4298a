namespace Driveline.Advice;

/// <content>Answers about the slip clutch.</content>
public static partial class OwnerFacts
{
    /// <summary>When was the clutch last loosened, slipped and reset: within a year, longer ago, or never?</summary>
    public static class SlipCheck
    {
        /// <summary>The clutch was slipped within a year.</summary>
        public static readonly Fact WithinYear = Fact.Of("slipCheck", "withinYear");

        /// <summary>The clutch was last slipped more than a year ago.</summary>
        public static readonly Fact OverYear = Fact.Of("slipCheck", "overYear");

        /// <summary>The clutch was never slipped.</summary>
        public static readonly Fact Never = Fact.Of("slipCheck", "never");
    }

    /// <summary>Where does the machine stand: under a roof, or outdoors?</summary>
    public static class Storage
    {
        /// <summary>It stands under a roof.</summary>
        public static readonly Fact Indoors = Fact.Of("storage", "indoors");

        /// <summary>It stands outdoors.</summary>
        public static readonly Fact Outdoors = Fact.Of("storage", "outdoors");
    }

    /// <summary>Is the climate dry or moist?</summary>
    public static class Climate
    {
        /// <summary>The climate is dry.</summary>
        public static readonly Fact Dry = Fact.Of("climate", "dry");

        /// <summary>The climate is moist.</summary>
        public static readonly Fact Moist = Fact.Of("climate", "moist");
    }

    /// <summary>With the key out, measure the clutch's springs: as in the manual, shorter, longer, or coil on coil?</summary>
    public static class SpringLength
    {
        /// <summary>The springs have the manual's length.</summary>
        public static readonly Fact AsManual = Fact.Of("springLength", "asManual");

        /// <summary>The springs are shorter than the manual's length: set too tight.</summary>
        public static readonly Fact Shorter = Fact.Of("springLength", "shorter");

        /// <summary>The springs are longer than the manual's length: set too loose.</summary>
        public static readonly Fact Longer = Fact.Of("springLength", "longer");

        /// <summary>The springs are coil on coil.</summary>
        public static readonly Fact CoilsTouch = Fact.Of("springLength", "coilsTouch");
    }

    /// <summary>
    /// With the key out and the clutch cold, take it apart and look at the facings: good, worn, oily, glazed, or rusted on?
    /// </summary>
    public static class Facings
    {
        /// <summary>The facings are good.</summary>
        public static readonly Fact Good = Fact.Of("facings", "good");

        /// <summary>The facings are worn.</summary>
        public static readonly Fact Worn = Fact.Of("facings", "worn");

        /// <summary>The facings are oily.</summary>
        public static readonly Fact Oily = Fact.Of("facings", "oily");

        /// <summary>The facings are glazed.</summary>
        public static readonly Fact Glazed = Fact.Of("facings", "glazed");

        /// <summary>The facings are rusted to their plates.</summary>
        public static readonly Fact Rusted = Fact.Of("facings", "rusted");
    }

    /// <summary>
    /// Do the slip test of the manual from the seat, with nobody near, then stop and take the key out to look at the marks: did it slip as
    /// set, early, or not at all?
    /// </summary>
    public static class SlipTest
    {
        /// <summary>In the slip test it slips as set.</summary>
        public static readonly Fact SlipsAsSet = Fact.Of("slipTest", "slipsAsSet");

        /// <summary>In the slip test it slips early.</summary>
        public static readonly Fact SlipsEarly = Fact.Of("slipTest", "slipsEarly");

        /// <summary>In the slip test it does not slip.</summary>
        public static readonly Fact DoesNotSlip = Fact.Of("slipTest", "doesNotSlip");
    }

    /// <summary>Are the clutch's linings run in, or new and not run in?</summary>
    public static class Linings
    {
        /// <summary>The linings are run in.</summary>
        public static readonly Fact RunIn = Fact.Of("linings", "runIn");

        /// <summary>The linings are new and have not been run in.</summary>
        public static readonly Fact NotRunIn = Fact.Of("linings", "notRunIn");
    }

    /// <summary>With the key out, look above the clutch: does oil come from a leaking seal, or from nowhere?</summary>
    public static class OilFrom
    {
        /// <summary>No oil comes from above.</summary>
        public static readonly Fact Nowhere = Fact.Of("oilFrom", "nowhere");

        /// <summary>A seal leaks oil onto the clutch.</summary>
        public static readonly Fact LeakingSeal = Fact.Of("oilFrom", "leakingSeal");
    }
}
