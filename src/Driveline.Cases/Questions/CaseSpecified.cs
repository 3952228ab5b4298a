using Driveline.Chains;

namespace Driveline.Cases.Questions;

/// <summary>What the manual specifies for each device of a case: what its element says, else what the case says of the only one of its kind.</summary>
internal static class CaseSpecified
{
    /// <summary>One for each device of the chain, in order from the tractor; null where nothing is stated.</summary>
    public static IReadOnlyList<ProtectiveDevice?> InOrder(CaseFile file, DrivelineChain chain, List<CaseError> errors)
    {
        DrivelineElement[] elements = [.. All(file.Driveline).Where(e => e.Kind is ElementKind.ShearBolt or ElementKind.SlipClutch or ElementKind.CutOut)];
        IReadOnlyList<ProtectiveDevice> devices = chain.Devices;
        var specified = new ProtectiveDevice?[devices.Count];
        for (int k = 0; k < specified.Length && k < elements.Length; k++)
        {
            bool isBolt = elements[k].Kind == ElementKind.ShearBolt;
            bool isOnly = elements.Count(e => e.Kind == ElementKind.ShearBolt == isBolt) == 1;
            SpecifiedFacts? facts = elements[k].Specified ?? (isOnly ? file.Specified : null);
            specified[k] = isBolt ? Bolt(facts, devices[k], errors) : Clutch(facts, devices[k]);
        }

        return specified;
    }

    private static ProtectiveDevice? Bolt(SpecifiedFacts? facts, ProtectiveDevice fitted, List<CaseError> errors) =>
        facts?.ShearBolt is { } named && fitted is ShearBoltDevice bolt ? CaseBolt.Specified(named, bolt, errors) : null;

    private static StatedDevice? Clutch(SpecifiedFacts? facts, ProtectiveDevice fitted) =>
        facts?.SlipTorque is { } torque ? StatedDevice.Of("specified clutch", fitted.Kind, fitted.AfterTrip, torque) : null;

    private static IEnumerable<DrivelineElement> All(IEnumerable<DrivelineElement> list) => list.SelectMany(e => new[] { e }.Concat(All(e.Driveline)));
}
