namespace Driveline.Advice;

/// <content>Answers about a strike and the damage it left.</content>
public static partial class OwnerFacts
{
    /// <summary>What hit the obstacle: a blade, the pan under the blades, the deck, or nothing?</summary>
    public static class WhatStruck
    {
        /// <summary>A blade hit it.</summary>
        public static readonly Fact Blade = Fact.Of("whatStruck", "blade");

        /// <summary>The pan hit it: that blow mostly does not pass the driveline.</summary>
        public static readonly Fact Pan = Fact.Of("whatStruck", "pan");

        /// <summary>The deck hit it: that blow does not pass the driveline.</summary>
        public static readonly Fact Deck = Fact.Of("whatStruck", "deck");

        /// <summary>Nothing was hit.</summary>
        public static readonly Fact Nothing = Fact.Of("whatStruck", "nothing");
    }

    /// <summary>What did the rotor do: stop dead, slow down, or barely slow?</summary>
    public static class RotorAtStrike
    {
        /// <summary>The rotor stopped dead.</summary>
        public static readonly Fact StoppedDead = Fact.Of("rotorAtStrike", "stoppedDead");

        /// <summary>The rotor slowed down.</summary>
        public static readonly Fact Slowed = Fact.Of("rotorAtStrike", "slowed");

        /// <summary>The rotor barely slowed.</summary>
        public static readonly Fact BarelySlowed = Fact.Of("rotorAtStrike", "barelySlowed");
    }

    /// <summary>
    /// With the key out, sight along the driveline's tube and look at the gearbox: nothing, a twisted tube, or a broken gearbox?
    /// </summary>
    public static class DamageSeen
    {
        /// <summary>No damage is seen.</summary>
        public static readonly Fact Nothing = Fact.Of("damageSeen", "nothing");

        /// <summary>The driveline's tube is twisted.</summary>
        public static readonly Fact TubeTwisted = Fact.Of("damageSeen", "tubeTwisted");

        /// <summary>The gearbox is broken.</summary>
        public static readonly Fact GearboxBroken = Fact.Of("damageSeen", "gearboxBroken");
    }
}
