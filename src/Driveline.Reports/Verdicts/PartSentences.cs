using Driveline.Protection;

namespace Driveline.Reports.Verdicts;

/// <summary>What guards each part, from which side and with how much room.</summary>
internal static class PartSentences
{
    public static string Of(PartCheck check, ProtectionVerdict verdict, Phrase phrase)
    {
        string part = PartNames.Capital(check.Part, verdict, phrase);
        if (check.Part.Limit is null && (check.Part.StoresEnergy || check.GuardedBy is not { NeverLetsGo: true }))
        {
            return phrase.Of(Phrase.Code(check.Part.StoresEnergy ? "part.store" : "part.limitNotKnown").With("part", part));
        }

        string text = phrase.Of(
            Phrase.Code(check.GuardedBy is not { } guard ? "part.open" : guard.NeverLetsGo ? "part.seized" : "part.guarded")
            .With("part", part)
            .With("answer", phrase.Of("answer." + check.Guards).ToLowerInvariant())
            .With("device", phrase.Name(check.GuardedBy?.Name))
            .With("side", phrase.Of("side." + check.Side)));
        if (check.GuardedBy is { NeverLetsGo: false })
        {
            text += Margin(check.Margin, phrase);
        }

        if (check.InertiaBetween is { } inertia)
        {
            text += " " + phrase.Of(Phrase.Code("part.inertia").With("inertia", phrase.Name(inertia.Name)));
        }

        return LimitKind(check.Part.Limit) is { } kind ? text + " " + phrase.Of(kind) : text;
    }

    private static string? LimitKind(Chains.PartLimit? limit) => limit is null ? null
        : limit.IsRating ? "limitKind.Rating"
        : limit.IsDefault ? "limitKind.ImpliedByPtoType"
        : limit.IsAssumed ? "limitKind.UnsourcedOverloadFactor"
        : null;

    private static string Margin(double? margin, Phrase phrase) => margin switch
    {
        null => string.Empty,
        0 => " " + phrase.Of("part.unbounded"),
        >= 1 => " " + phrase.Of(Phrase.Code("part.room").With("more", MarginWords.Room(margin.Value, phrase))),
        _ => " " + phrase.Of(Phrase.Code("part.overlap").With("more", MarginWords.Overlap(margin.Value, phrase))),
    };
}
