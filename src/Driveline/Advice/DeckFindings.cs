using Driveline.Findings;
using Driveline.Quantities;

namespace Driveline.Advice;

/// <summary>Codes of the findings about a deck's attitude.</summary>
public static class DeckFindings
{
    /// <summary>The front tip is lower than the rear one by more than "about level".</summary>
    public const string NoseDown = "deckNoseDown";

    /// <summary>The front tip is higher than the rear one by more than "about level".</summary>
    public const string NoseUp = "deckNoseUp";

    /// <summary>The lowest tip is below the usual least cutting height.</summary>
    public const string BelowUsualHeight = "deckBelowUsualHeight";

    /// <summary>The blades reach into the ground.</summary>
    public const string ReachesGround = "deckReachesGround";

    /// <summary>The blades may reach into the highest bumps.</summary>
    public const string MayReachGround = "deckMayReachGround";

    internal static IEnumerable<Finding> OfAttitude(DeckAttitude deck)
    {
        double levelRad = DeckPractice.AboutLevel.Value * Si.Degree;
        if (Math.Abs(deck.PitchRad) > levelRad)
        {
            bool isDown = deck.PitchRad < 0;
            yield return Finding.Of(isDown ? NoseDown : NoseUp, isDown ? Severity.Warning : Severity.Note)
                .With("difference", QuantityKind.Length, Math.Abs(deck.FrontM - deck.RearM))
                .With("pitch", QuantityKind.Angle, Math.Abs(deck.PitchRad));
        }

        double least = DeckPractice.LeastHeight.Value / 1000;
        if (deck.LowestM < least)
        {
            yield return Finding.Of(BelowUsualHeight, Severity.Warning)
                .With("lowest", QuantityKind.Length, deck.LowestM)
                .With("least", QuantityKind.Length, least);
        }
    }

    internal static IEnumerable<Finding> OfGround(DeckAttitude deck, LengthBand bumps)
    {
        switch (deck.ReachesGround(bumps))
        {
            case Protection.Answer.Yes:
                yield return Ground(ReachesGround, Severity.Danger, deck, bumps);
                break;
            case Protection.Answer.Maybe:
            case Protection.Answer.NotKnown:
                yield return Ground(MayReachGround, Severity.Warning, deck, bumps);
                break;
        }
    }

    private static Finding Ground(string code, Severity severity, DeckAttitude deck, LengthBand bumps) => Finding.Of(code, severity)
        .With("lowest", QuantityKind.Length, deck.LowestM)
        .With("bumps", QuantityKind.Length, bumps.SiBand.High);
}
