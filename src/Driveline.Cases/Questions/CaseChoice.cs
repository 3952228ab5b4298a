using Driveline.Chains;
using Driveline.Choosing;
using Driveline.Quantities;

namespace Driveline.Cases.Questions;

/// <summary>The terms on which a case lets a bolt be chosen: its stock, its holes, its bolt.</summary>
public static class CaseChoice
{
    /// <summary>The terms for the first shear bolt from the tractor.</summary>
    public static ChoiceTerms TermsOf(CaseFile file) => TermsOf(file, null);

    /// <summary>The terms for the shear bolt of a name; null for the first from the tractor.</summary>
    /// <exception cref="ArgumentNullException">The case is missing.</exception>
    /// <exception cref="ArgumentException">The facts about a bolt contradict each other; <see cref="CaseQuestion.Errors"/> says how.</exception>
    public static ChoiceTerms TermsOf(CaseFile file, string? device)
    {
        ChoiceTerms terms = ChoiceTerms.Default.WithDevice(device).WithStock(Guard.NotNull(file, nameof(file)).ParsedStock ?? StockList.Usual);
        ShearBoltFacts? bolt = Bolts(file.Driveline).FirstOrDefault(b => CaseBolt.Device(b) is ShearBoltDevice && (device is null || CaseBolt.NameOf(b) == device));
        BoltHoles holes = bolt?.HoleDiameter is { } present ? BoltHoles.AsFitted.WithPresent(present) : BoltHoles.AsFitted;
        return terms.WithHoles(bolt?.PermittedHole is { } permitted ? holes.WithRedrilled(permitted) : holes);
    }

    private static IEnumerable<ShearBoltFacts> Bolts(IEnumerable<DrivelineElement> elements) => elements.SelectMany(
        e => e.ShearBolt is { } bolt ? [bolt] : Bolts(e.Driveline));
}
