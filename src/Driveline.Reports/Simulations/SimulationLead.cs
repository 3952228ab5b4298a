using Driveline.Chains;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Simulations;

/// <summary>What a simulated event did, in a few words: what acted and when, and which parts were overloaded.</summary>
/// <remarks>"Nothing was overloaded" is said only when every part with a limit is known to hold; parts without a limit are named.</remarks>
internal static class SimulationLead
{
    public static string Of(SimulationCheck check, Phrase phrase)
    {
        string acts = Acts(check, phrase);
        bool isKnown = check.With is not null && check.Simulation.Strike is not { MissesDriveline: true };
        string said = isKnown ? string.Join(" ", new[] { acts }.Concat(Engaged(check, phrase)).Concat(Parts(check, phrase))) : acts;
        return check.Simulation is { CanRun: true, Strike.Place: StrikePlace.Pan }
            ? phrase.Of("simulate.lead.pan") + " " + said : said;
    }

    /// <summary>
    /// Red where a part is damaged, green only where every part is known to hold and no device acts that should not: what breaks as the PTO
    /// is engaged is the trouble itself, whatever it spares; what breaks in a strike did its work.
    /// </summary>
    public static LeadTone ToneOf(SimulationCheck check)
    {
        SimulatedLoad[] parts = [.. check.Loads.Where(l => l.Element is Part { StoresEnergy: false })];
        return parts.Any(l => l.DamagedWith == Answer.Yes) ? LeadTone.Bad
            : check.With is not null && check.Simulation.Strike is not { MissesDriveline: true } && parts.Length > 0
                && parts.All(l => l.DamagedAt is not null && l.DamagedWith == Answer.No) && Nuisance(check) is null ? LeadTone.Good
            : LeadTone.Careful;
    }

    private static string Acts(SimulationCheck check, Phrase phrase) => check switch
    {
        { Simulation.Strike.MissesDriveline: true } => phrase.Of("simulate.lead.beside"),
        { With: { TrippedDevice: { } device, TripTime: { } time } } => phrase.Of(Phrase.Code("simulate.lead.tripped." + device.Kind)
            .With("device", phrase.Name(device.Name))
            .With("time", TimeWords.Of(time.Seconds, phrase))),
        { Simulation.Chain.Devices.Count: 0 } => phrase.Of("simulate.lead.noDevice"),
        { Tripped: false } => phrase.Of("simulate.lead.notTripped"),
        _ => phrase.Of("simulate.lead.notKnown"),
    };

    // The device that engaging makes act although that is not its job.
    private static ProtectiveDevice? Nuisance(SimulationCheck check) =>
        check is { Simulation.Event: SimulatedEvent.Engagement, With.TrippedDevice: { StandsEngagement: false } device } ? device : null;

    private static IEnumerable<string> Engaged(SimulationCheck check, Phrase phrase) =>
        Nuisance(check) is { } device ? [phrase.Of("simulate.lead.engaging." + device.Kind)] : [];

    private static IEnumerable<string> Parts(SimulationCheck check, Phrase phrase)
    {
        SimulatedLoad[] limited = [.. check.Loads.Where(l => l.DamagedAt is not null)];
        SimulatedLoad[] damaged = [.. limited.Where(l => l.DamagedWith == Answer.Yes)];
        SimulatedLoad[] open = [.. limited.Where(l => l.DamagedWith is Answer.Maybe or Answer.NotKnown)];
        SimulatedLoad[] near = [.. open.Where(l => !(l.WithProtection < l.DamagedAt!.Low))];
        SimulatedLoad[] unlimited = [.. check.Loads.Where(l => l.DamagedAt is null && l.Element is Part { StoresEnergy: false })];
        if (damaged.Length > 0)
        {
            yield return Named("simulate.lead.damaged", damaged, phrase);
        }

        if (near.Length > 0)
        {
            yield return Named("simulate.lead.near", near, phrase);
        }

        if (damaged.Length + near.Length == 0 && limited.Length > 0)
        {
            yield return phrase.Of(open.Length > 0 ? "simulate.lead.uncertain"
                : unlimited.Length > 0 ? "simulate.lead.noneKnown"
                : check.With!.Tripped ? "simulate.lead.nothingElse"
                : "simulate.lead.nothing");
        }

        if (unlimited.Length > 0)
        {
            yield return Named("simulate.lead.unlimited", unlimited, phrase);
        }
    }

    private static string Named(string code, SimulatedLoad[] loads, Phrase phrase) =>
        phrase.Of(Phrase.Code(code).With("names", string.Join(", ", loads.Select(l => phrase.Name(l.Element.Name)))));
}
