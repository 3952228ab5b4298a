using Driveline.Wording;
using UnitsNet;

namespace Driveline.Reports.Verdicts;

/// <summary>Torque in the unit that a reader asked for.</summary>
internal static class TorqueShown
{
    public static double PerNm(DisplayUnits units) => units == DisplayUnits.UsCustomary ? Torque.FromNewtonMeters(1).PoundForceFeet : 1;
}
