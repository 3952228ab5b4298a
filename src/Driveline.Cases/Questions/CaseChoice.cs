using Driveline.Cases.Members;
using Driveline.Choosing;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Quantities;

namespace Driveline.Cases.Questions;

/// <summary>
/// The terms on which a case lets a bolt be chosen (its stock, its holes, its bolt), and the settings of its slip clutches.
/// </summary>
internal static class CaseChoice
{
    /// <summary>The terms for the first shear bolt from the tractor.</summary>
    public static ChoiceTerms TermsOf(CaseFile file) => TermsOf(file, null);

    /// <summary>The terms for the shear bolt of a name; null for the first from the tractor.</summary>
    /// <exception cref="ArgumentNullException">The case is missing.</exception>
    /// <exception cref="ArgumentException">
    /// The facts about a bolt contradict each other; <see cref="CaseQuestion.Errors"/> says how.
    /// </exception>
    public static ChoiceTerms TermsOf(CaseFile file, string? device)
    {
        ChoiceTerms terms = ChoiceTerms.Default.WithDevice(device)
            .WithStock(Guard.NotNull(file, nameof(file)).Facts.Get(CaseFileMembers.Stock) ?? StockList.Usual);
        CaseObject? bolt = CaseElements.All(file.Facts.Get(CaseFileMembers.Driveline), ElementMembers.ShearBolt)
            .FirstOrDefault(b => BoltFacts.Fitted(b, file.Date).Joint is not null && (device is null || BoltFacts.NameOf(b) == device));
        BoltHoles holes = bolt?.Get(ShearBoltMembers.HoleDiameter) is { } present ? BoltHoles.AsFitted.WithPresent(present)
            : BoltHoles.AsFitted;
        return terms.WithHoles(bolt?.Get(ShearBoltMembers.PermittedHole) is { } permitted ? holes.WithRedrilled(permitted) : holes);
    }

    /// <summary>
    /// True when the case has a shear bolt or a slip clutch, however little is known of it, in its main line or a branch.
    /// </summary>
    /// <exception cref="ArgumentNullException">The case is missing.</exception>
    public static bool HasAnyToChoose(CaseFile file) =>
        CaseElements.All(Guard.NotNull(file, nameof(file)).Facts.Get(CaseFileMembers.Driveline))
        .Any(e => e.Get(ElementMembers.ShearBolt) is not null || e.Get(ElementMembers.SlipClutch) is not null);

    /// <summary>The settings of every slip clutch of a case, in order from the tractor; empty when it has none.</summary>
    /// <exception cref="ArgumentNullException">The case is missing.</exception>
    /// <exception cref="ArgumentException">Facts contradict each other; <see cref="CaseQuestion.Errors"/> says how.</exception>
    public static IReadOnlyList<ClutchChoice> SettingsOf(CaseFile file) => SettingsOf(file, SimulationLimits.Usual);

    /// <summary>The same; all that the case asks to be simulated runs within limits together.</summary>
    /// <exception cref="ArgumentNullException">The case or the limits are missing.</exception>
    /// <exception cref="ArgumentException">Facts contradict each other; <see cref="CaseQuestion.Errors"/> says how.</exception>
    public static IReadOnlyList<ClutchChoice> SettingsOf(CaseFile file, SimulationLimits limits)
    {
        CaseQuestion read = CaseQuestion.Of(file, limits);
        return read is { Question: { } asked, Errors.Count: 0 } ? SettingsOf(asked)
            : throw new ArgumentException("The case contradicts itself: " + read.Errors[0], nameof(file));
    }

    /// <summary>The settings of every slip clutch of a question.</summary>
    public static IReadOnlyList<ClutchChoice> SettingsOf(ProtectionQuestion question) =>
        SettingsOf(question, ProtectionPolicy.Default, CancellationToken.None);

    internal static IReadOnlyList<ClutchChoice> SettingsOf(ProtectionQuestion question, ProtectionPolicy policy, CancellationToken stop) =>
        [.. CaseClutch.In(question.Chain).Select(clutch => SettingOf(question, clutch, policy, stop))];

    private static ClutchChoice SettingOf(ProtectionQuestion question, CaseClutch clutch, ProtectionPolicy policy, CancellationToken stop)
    {
        ClutchChoice choice = clutch.Clutch is { } described
            ? ClutchChoice.For(question, clutch.Device, described, clutch.Condition, policy, stop)
            : ClutchChoice.WithoutClutch(question, clutch.Device, clutch.Condition, policy);
        return clutch.Fitted.ThreadPitch is { } pitch ? choice.WithThreadPitch(pitch) : choice;
    }
}
