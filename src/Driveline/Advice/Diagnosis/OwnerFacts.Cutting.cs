namespace Driveline.Advice;

/// <content>Answers about what is cut, on what ground, and with what deck and blades.</content>
public static partial class OwnerFacts
{
    /// <summary>
    /// On level ground, with the key out and the deck on stands at its working height, measure the front and rear blade tips without
    /// reaching under: front lower, about level, or front higher?
    /// </summary>
    public static class DeckAttitude
    {
        /// <summary>The front of the deck is low.</summary>
        public static readonly Fact NoseDown = Fact.Of("deckAttitude", "noseDown");

        /// <summary>The deck is about level.</summary>
        public static readonly Fact Level = Fact.Of("deckAttitude", "level");

        /// <summary>The front of the deck is high.</summary>
        public static readonly Fact NoseUp = Fact.Of("deckAttitude", "noseUp");
    }

    /// <summary>Does it leave bare patches of earth, or earth on the blades?</summary>
    public static class Scalping
    {
        /// <summary>It leaves bare patches of earth.</summary>
        public static readonly Fact Seen = Fact.Of("scalping", "seen");

        /// <summary>It leaves no bare patches.</summary>
        public static readonly Fact NotSeen = Fact.Of("scalping", "notSeen");
    }

    /// <summary>How high does it cut: under 75 mm (3 in), up to 150 mm (6 in), or higher?</summary>
    public static class CuttingHeight
    {
        /// <summary>It cuts lower than 75 mm (3 in).</summary>
        public static readonly Fact Under75mm = Fact.Of("cuttingHeight", "under75mm");

        /// <summary>It cuts at 75 to 150 mm (3 to 6 in).</summary>
        public static readonly Fact From75to150mm = Fact.Of("cuttingHeight", "from75to150mm");

        /// <summary>It cuts higher than 150 mm (6 in).</summary>
        public static readonly Fact Over150mm = Fact.Of("cuttingHeight", "over150mm");
    }

    /// <summary>What is the ground like: smooth, rough, or with stumps or stones?</summary>
    public static class Ground
    {
        /// <summary>The ground is smooth.</summary>
        public static readonly Fact Smooth = Fact.Of("ground", "smooth");

        /// <summary>The ground is rough.</summary>
        public static readonly Fact Rough = Fact.Of("ground", "rough");

        /// <summary>There are stumps or stones.</summary>
        public static readonly Fact StumpsOrStones = Fact.Of("ground", "stumpsOrStones");
    }

    /// <summary>What is cut: light growth, heavy growth, or woody brush?</summary>
    public static class Growth
    {
        /// <summary>The growth is light.</summary>
        public static readonly Fact Light = Fact.Of("growth", "light");

        /// <summary>The growth is heavy.</summary>
        public static readonly Fact Heavy = Fact.Of("growth", "heavy");

        /// <summary>The growth is woody.</summary>
        public static readonly Fact Woody = Fact.Of("growth", "woody");
    }

    /// <summary>How fast is it driven: slowly, or fast for this growth?</summary>
    public static class GroundSpeed
    {
        /// <summary>It is driven slowly.</summary>
        public static readonly Fact Slow = Fact.Of("groundSpeed", "slow");

        /// <summary>It is driven fast.</summary>
        public static readonly Fact Fast = Fact.Of("groundSpeed", "fast");
    }

    /// <summary>With the key out and the deck blocked, look at the blades: sharp or dull?</summary>
    public static class Blades
    {
        /// <summary>The blades are sharp.</summary>
        public static readonly Fact Sharp = Fact.Of("blades", "sharp");

        /// <summary>The blades are dull.</summary>
        public static readonly Fact Dull = Fact.Of("blades", "dull");
    }

    /// <summary>Are jams part of this work (augers, snow blowers), or rare?</summary>
    public static class Jams
    {
        /// <summary>Jams are part of this work.</summary>
        public static readonly Fact PartOfTheWork = Fact.Of("jams", "partOfTheWork");

        /// <summary>Jams are rare in this work.</summary>
        public static readonly Fact Rare = Fact.Of("jams", "rare");
    }

    /// <summary>With the key out and the deck blocked, compare the blades: even, or bent or unequal?</summary>
    public static class BladeCondition
    {
        /// <summary>The blades are even.</summary>
        public static readonly Fact Even = Fact.Of("bladeCondition", "even");

        /// <summary>A blade is bent or unequal.</summary>
        public static readonly Fact BentOrUnequal = Fact.Of("bladeCondition", "bentOrUnequal");
    }
}
