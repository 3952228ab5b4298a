using System.Diagnostics.CodeAnalysis;
using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Chains;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Quantities;

namespace Driveline.Sweeps.Outputs;

/// <summary>Every output that a case answers.</summary>
internal static class CaseOutputs
{
    public static readonly IReadOnlyList<CaseOutputRow> All =
    [
        Word("assess.verdict", "The verdict's headline.", (v, _) => v.Headline.ToString()),
        Word("assess.guards", "Does the protection act before something breaks?", (v, _) => v.Guards.ToString()),
        Word("assess.quiet", "Does it stay quiet in normal work?", (v, _) => v.Quiet.ToString()),
        Word("assess.standing", "May the work go on?", (v, _) => v.Standing.State.ToString()),
        Word("assess.guardsPart", NamedKind.Part, "Is that part guarded?",
            (v, of) => v.Parts.FirstOrDefault(p => IsNamed(p.Part, of))?.Guards.ToString()),
        Number("assess.guardMargin", "Damage torque low of the weakest part over trip high.", v => v.GuardMargin ?? double.NaN),
        Number("assess.workMargin", "Trip low over work peak high.", v => v.WorkMargin ?? double.NaN),
        .. Band("assess.tripTorqueNm", "Torque at the PTO at which the first device acts, N·m.", v => v.Trip),
        .. Band("assess.workPeakNm", "Highest torque of normal work at the PTO, N·m.", v => v.WorkPeak),
        .. Device("shearBolt.breakTorqueNm", ClosedKind.BreakTorque, "Break torque at the bolt, N·m.",
            d => d is ShearBoltDevice { BreakTorque.IsKnown: true } bolt ? bolt.BreakTorque.Torque : null),
        .. Device("clutch.slipTorqueNm", ClosedKind.SlipTorque, "Torque while it slips, at the clutch, N·m.",
            d => d is SlipClutchDevice ? d.Running : null),
        .. Device("clutch.breakawayTorqueNm", ClosedKind.Breakaway, "Torque that starts a slip, at the clutch, N·m.",
            d => d is SlipClutchDevice ? d.Breakaway : null),
        .. Device("clutch.clampForceN", ClosedKind.ClampForce, "Clamp force of its springs, N.",
            d => (d as SlipClutchDevice)?.SlipTorque.ClampForce),
        new("clutch.trust", OutputCost.Case, NamedKind.SlipClutch, "May it be trusted to slip?")
        {
            Word = (asked, of, _) => (DeviceOf(asked, NamedKind.SlipClutch, of) as SlipClutchDevice)?.SlipTorque.Trust.ToString(),
        },
        Simulated("simulate.peakTorqueNm", NamedKind.Element, "Highest torque in a part or device, protected as fitted, N·m.",
            (run, of) => PeakOf(run, run.With, of)),
        Simulated("simulate.peakTorqueUnprotectedNm", NamedKind.Element, "Highest torque when no device can act, N·m.",
            (run, of) => PeakOf(run, run.Without, of)),
        Simulated("simulate.tripTimeS", NamedKind.Nothing, "When a device acts, s.", (run, _) => run.With?.TripTime?.Seconds),
        Simulated("simulate.slipEnergyJ", NamedKind.Nothing, "Heat of all slips, J.", (run, _) => run.With?.SlipEnergy.Joules),
        new("simulate.damaged", OutputCost.WholeSimulation, NamedKind.Part, "Is that part damaged, protected as fitted?")
        {
            Word = (asked, of, stop) => LoadOf(asked.Simulation(stop), of)?.DamagedWith.ToString(),
        },
        new("simulate.tripped", OutputCost.Simulation, NamedKind.Nothing, "Does a device act?")
        {
            Word = (asked, _, stop) => asked.Runs(stop)?.Tripped is { } tripped ? tripped ? "Yes" : "No" : null,
        },
    ];

    /// <summary>The output of a name, with the part or device in brackets when there is one.</summary>
    public static bool TryFind(
        CaseFile file, string name, [NotNullWhen(true)] out CaseOutput? output, out string? problem, out string? nearest)
    {
        int bracket = name.IndexOf('[', StringComparison.Ordinal);
        string plain = bracket < 0 ? name : name[..bracket];
        string? of = bracket < 0 ? null : name[(bracket + 1)..].TrimEnd(']');
        output = null;
        nearest = null;
        problem = null;
        CaseOutputRow? row = All.FirstOrDefault(r => r.Name == plain);
        if (row is null)
        {
            nearest = NearestName.Of(plain, All.Select(r => r.Name));
            problem = "\"" + plain + "\" is not an output"
                + (nearest is null ? "; there are " + string.Join(", ", All.Select(r => r.Name)) + "."
                    : "; did you mean \"" + nearest + "\"?");
            return false;
        }

        string[] names = NamesOf(file, row.Named);
        if (of is null ? row.MustName : !names.Contains(of, StringComparer.OrdinalIgnoreCase))
        {
            nearest = of is null ? null : NearestName.Of(of, names);
            problem = (of is null ? "\"" + plain + "\" must name what it is of in brackets"
                : row.Named == NamedKind.Nothing ? "\"" + plain + "\" is of nothing that has a name"
                : "There is no \"" + of + "\" of that kind in the case")
                + (nearest is not null ? "; did you mean \"" + nearest + "\"?"
                    : names.Length > 0 ? "; there are: " + string.Join(", ", names) + "." : ".");
            return false;
        }

        if (of is null && row.Named is NamedKind.ShearBolt or NamedKind.SlipClutch && names.Length == 0)
        {
            problem = "The case has no " + (row.Named == NamedKind.ShearBolt ? "shear bolt." : "slip clutch.");
            return false;
        }

        output = new CaseOutput(name, row, of);
        return true;
    }

    private static string[] NamesOf(CaseFile file, NamedKind kind) => MappedCase.Of(file).Chain is not { } chain ? []
        : [.. chain.Nodes.Select(n => n.Element).OfType<Element>().Where(e => kind switch
        {
            NamedKind.Part => e is Part,
            NamedKind.Element => true,
            NamedKind.ShearBolt => e is ShearBoltDevice,
            NamedKind.SlipClutch => e is SlipClutchDevice,
            _ => false,
        }).Select(e => e.Name)];

    private static CaseOutputRow Word(string name, string doc, Func<ProtectionVerdict, string?, string?> of) =>
        Word(name, NamedKind.Nothing, doc, of);

    private static CaseOutputRow Word(string name, NamedKind named, string doc, Func<ProtectionVerdict, string?, string?> of) =>
        new(name, OutputCost.Case, named, doc) { Word = (asked, element, stop) => of(asked.Verdict(stop), element) };

    private static CaseOutputRow Number(string name, string doc, Func<ProtectionVerdict, double> of) =>
        new(name, OutputCost.Case, NamedKind.Nothing, doc) { Number = (asked, _, stop) => of(asked.Verdict(stop)) };

    private static CaseOutputRow Simulated(string name, NamedKind named, string doc, Func<SimulationRuns, string?, double?> of) =>
        new(name, OutputCost.Simulation, named, doc)
        {
            Number = (asked, element, stop) => asked.Runs(stop) is { } runs && of(runs, element) is { } value ? value : double.NaN,
        };

    private static IEnumerable<CaseOutputRow> Band(string name, string doc, Func<ProtectionVerdict, QuantityBand?> of) =>
        Ends(name, NamedKind.Nothing, null, doc, (asked, _, stop) => of(asked.Verdict(stop)));

    private static IEnumerable<CaseOutputRow> Device(string name, ClosedKind closed, string doc, Func<ProtectiveDevice?, QuantityBand?> of)
    {
        NamedKind kind = closed == ClosedKind.BreakTorque ? NamedKind.ShearBolt : NamedKind.SlipClutch;
        return Ends(name, kind, closed, doc, (asked, element, _) => of(DeviceOf(asked, kind, element)));
    }

    private static IEnumerable<CaseOutputRow> Ends(
        string name, NamedKind kind, ClosedKind? closed, string doc, Func<CaseAssessment, string?, CancellationToken, QuantityBand?> of)
    {
        foreach (BandPoint end in new[] { BandPoint.Low, BandPoint.Expected, BandPoint.High })
        {
            yield return new(name + "." + end.ToString().ToLowerInvariant(), OutputCost.Case, kind, doc)
            {
                Number = (asked, element, stop) => of(asked, element, stop) is { } band ? band.SiBand.At(end) : double.NaN,
                Closed = closed is { } what ? new ClosedOutput(what, end) : null,
            };
        }
    }

    /// <summary>The device of a kind and a name, else the first of the kind; null when there is none.</summary>
    public static ProtectiveDevice? DeviceOf(CaseAssessment asked, NamedKind kind, string? name)
    {
        foreach (ChainNode node in asked.Chain.Nodes)
        {
            ProtectiveDevice? device = node.Device;
            bool isKind = kind == NamedKind.ShearBolt ? device is ShearBoltDevice : device is SlipClutchDevice;
            if (isKind && (name is null || IsNamed(device!, name)))
            {
                return device;
            }
        }

        return null;
    }

    private static double? PeakOf(SimulationRuns runs, SimulationOutcome? run, string? name)
    {
        DrivelineChain chain = runs.Simulation.Chain;
        for (int k = 0; k < chain.Nodes.Length; k++)
        {
            if (chain.Nodes[k].Element is { } element and (Part or ProtectiveDevice) && IsNamed(element, name))
            {
                return runs.PeakNm(run, k);
            }
        }

        return null;
    }

    private static SimulatedLoad? LoadOf(CaseSimulation run, string? name)
    {
        foreach (SimulatedLoad load in run.Check?.Loads ?? [])
        {
            if (IsNamed(load.Element, name))
            {
                return load;
            }
        }

        return null;
    }

    private static bool IsNamed(Element element, string? name) => string.Equals(element.Name, name, StringComparison.OrdinalIgnoreCase);
}
