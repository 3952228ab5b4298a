using Driveline.Findings;
using Driveline.Quantities;

namespace Driveline.Advice;

/// <summary>Codes of the findings about a deck's attitude.</summary>
public static class DeckFindings
{
    /// <summary>The front tip is lower than the rear one by more than "about level".</summary>
    public const string NoseDown = "deck.noseDown";

    /// <summary>The front tip is higher than the rear one by more than "about level".</summary>
    public const string NoseUp = "deck.noseUp";

    /// <summary>The lowest tip is below the usual least cutting height.</summary>
    public const string BelowUsualHeight = "deck.belowUsualHeight";

    /// <summary>The blades reach into the ground.</summary>
    public const string ReachesGround = "deck.reachesGround";

    /// <summary>The blades may reach into the highest bumps.</summary>
    public const string MayReachGround = "deck.mayReachGround";

    /// <summary>The front tip is lower than the manual asks for.</summary>
    public const string LowerThanManual = "deck.lowerThanManual";

    /// <summary>The front tip is higher than the manual asks for.</summary>
    public const string HigherThanManual = "deck.higherThanManual";

    /// <summary>The deck stands as its manual asks for, or about level where no manual is at hand.</summary>
    public const string AboutRight = "deck.aboutRight";

    /// <summary>A longer top link mends it.</summary>
    public const string LengthenTopLink = "deck.lengthenTopLink";

    /// <summary>A shorter top link mends it.</summary>
    public const string ShortenTopLink = "deck.shortenTopLink";

    /// <summary>The tail wheel is to carry the deck lower.</summary>
    public const string LowerTail = "deck.lowerTail";

    /// <summary>The tail wheel is to carry the deck higher.</summary>
    public const string RaiseTail = "deck.raiseTail";

    /// <summary>Measurements are missing without which nothing can be said of the attitude.</summary>
    public const string NotMeasured = "deck.notMeasured";

    internal static IEnumerable<Finding> OfReading(DeckReading deck)
    {
        DeckAttitude attitude = deck.Attitude;
        if (deck.Manual is { } manual && !deck.IsAboutRight)
        {
            bool isDown = deck.AboveWantedRad < 0;
            yield return Finding.Of(isDown ? LowerThanManual : HigherThanManual, isDown ? Severity.Warning : Severity.Note)
                .With("difference", QuantityKind.Length, Math.Abs(attitude.RearM - attitude.FrontM - Si.Meters(manual)))
                .With("pitch", QuantityKind.Angle, Math.Abs(deck.AboveWantedRad));
        }

        foreach (Finding finding in OfAttitude(attitude).Where(f => deck.Manual is null || f.Code is not NoseDown and not NoseUp))
        {
            yield return finding;
        }

        if (deck.IsAboutRight)
        {
            yield return Finding.Of(AboutRight, Severity.Note).With("pitch", QuantityKind.Angle, Math.Abs(deck.AboveWantedRad));
        }

        foreach (Finding finding in deck.Bumps is { } bumps ? OfGround(attitude, bumps) : [])
        {
            yield return finding;
        }

        if (deck.TopLinkChange is { } change)
        {
            yield return Change(change > UnitsNet.Length.Zero ? LengthenTopLink : ShortenTopLink, change);
        }

        if (deck.TailWheelDrop is { } drop)
        {
            yield return Change(drop > UnitsNet.Length.Zero ? LowerTail : RaiseTail, drop);
        }
    }

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

    private static Finding Change(string code, UnitsNet.Length change) =>
        Finding.Of(code, Severity.Note).With("change", QuantityKind.Length, Math.Abs(Si.Meters(change)));

    private static Finding Ground(string code, Severity severity, DeckAttitude deck, LengthBand bumps) => Finding.Of(code, severity)
        .With("lowest", QuantityKind.Length, deck.LowestM)
        .With("bumps", QuantityKind.Length, bumps.SiBand.High);
}
