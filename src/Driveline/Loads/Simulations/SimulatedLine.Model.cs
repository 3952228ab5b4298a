using Driveline.Torsion;
using UnitsNet;

namespace Driveline.Loads;

/// <content>The torsional model of the line and the state in which its run begins.</content>
internal sealed partial class SimulatedLine
{
    private const int Few = 16;

    // Each has a name of its own. A few are looked through, of many a table is kept.
    private void Name()
    {
        HashSet<string>? taken = lumps.Count > Few ? new HashSet<string>(StringComparer.Ordinal) { Drive, Load, Struck } : null;
        for (int k = 0; k < lumpNames.Length; k++)
        {
            lumpNames[k] = Unused(taken, k == 0 ? Engine : "inertia at " + lumps[k].Name);
        }

        for (int l = 0; l < linkNames.Length; l++)
        {
            linkNames[l] = Unused(taken, links[l].Name);
        }
    }

    private string Unused(HashSet<string>? taken, string name)
    {
        string free = name;
        for (int k = 2; !(taken?.Add(free) ?? !IsTaken(free)); k++)
        {
            free = FormattableString.Invariant($"{name} ({k})");
        }

        return free;
    }

    private bool IsTaken(string name) => name is Drive or Load or Struck || Array.IndexOf(lumpNames, name) >= 0
        || Array.IndexOf(linkNames, name) >= 0;

    // T0 + K·(ω0 − ω) meets the load here; a line without slope, or none, carries it at the stated speed.
    private double SteadySpeed(SimulationDrive drive) => drive is { EngineInertia: not null, EngineLine: { SlopeNms: > 0 } line }
        ? line.SpeedRadPerS + ((line.TorqueNm - Math.Min(loadNm, line.MostNm)) / line.SlopeNms)
        : drive.SpeedRadPerS;

    private TorsionModel Build(SimulationDrive drive, double radPerS, bool isStrike)
    {
        var model = new TorsionModelBuilder(lumps.Count, links.Count + 2);
        for (int k = 0; k < lumps.Count; k++)
        {
            if (double.IsPositiveInfinity(lumps[k].InertiaKgM2))
            {
                model.AddHeldRotor(lumpNames[k], RotationalSpeed.FromRadiansPerSecond(radPerS));
            }
            else
            {
                model.AddRotor(lumpNames[k], MassMomentOfInertia.FromKilogramSquareMeters(lumps[k].InertiaKgM2));
            }
        }

        for (int l = 0; l < links.Count; l++)
        {
            AddLink(model, l);
        }

        if (drive.IsEngineFree(isStrike))
        {
            if (drive.EngineLine is { } line)
            {
                model.AddDrive(Drive, Engine, line);
            }
            else if (isStrike && loadNm > 0)
            {
                model.AddDrive(Drive, Engine, TorqueSpeedLine.Constant(Torque.FromNewtonMeters(loadNm)));
            }
        }

        int loaded = Loaded;
        if (loadNm > 0 && loaded > 0)
        {
            model.AddFrictionLoad(Load, lumpNames[loaded], Torque.FromNewtonMeters(loadNm), Torque.FromNewtonMeters(loadNm));
        }

        int struck = lumps.FindIndex(static lump => lump.IsStruck);
        if (strike is not null && struck >= 0)
        {
            model.AddObstacle(Struck, lumpNames[struck], strike.AtPto(chain.Nodes[chain.IndexOf(strike.At)].Ratio, ends.Load));
        }

        return model.BuildLast();
    }

    private void AddLink(TorsionModelBuilder model, int l)
    {
        LineLink link = links[l];
        if (link.Compliance == 0)
        {
            model.AddCoupling(linkNames[l], lumpNames[l], lumpNames[l + 1], link.Coupling!);
            return;
        }

        var shaft = Shaft.Of(1 / link.Compliance, link.DampingNms);
        if (link.Coupling is null)
        {
            model.AddShaft(linkNames[l], lumpNames[l], lumpNames[l + 1], shaft);
        }
        else
        {
            model.AddShaft(linkNames[l], lumpNames[l], lumpNames[l + 1], shaft, link.Coupling);
        }
    }

    private TorsionStart Steady(double radPerS)
    {
        TorsionStart start = Model.TurningAt(RotationalSpeed.FromRadiansPerSecond(radPerS));
        int before = Math.Min(links.Count, Loaded);
        return before > 0 ? start.WithTorqueInFirst(before, loadNm) : start;
    }

    private TorsionStart Standing(double radPerS)
    {
        TorsionStart start = Model.AtRest();
        return double.IsPositiveInfinity(lumps[0].InertiaKgM2) ? start
            : start.WithSpeed(Engine, RotationalSpeed.FromRadiansPerSecond(radPerS));
    }
}
