using Driveline.Provenance;

namespace Driveline.ShearBolts;

/// <summary>How much a gap between the faces weakens a bolt: it bends before it shears.</summary>
/// <remarks>
/// EN 1993-1-8:2005, 3.13: (M / M_R)² + (F / F_R)² ≤ 1 with the gap term of its moment, M = F · c for a plane load F and a gap c,
/// M_R = 1.5 · W_el · f_y, W_el = π d³ / 32; safety factors taken off. The plate terms of that moment describe thick soft plates
/// that spread the bearing and are left out: with the faces together (c = 0) nothing is taken off. Lowers the low end only: the
/// moment capacity uses the lowest yield ratio of the class, and a bent bolt may also hold on. Codes for gaps that are packed, so that the
/// bolt is held, take off far less: a fifth at a packing one diameter thick (RCSC specification 5.1: 0.80; EN 1993-1-8, 3.6.1(12),
/// 9d/(8d + 3t): 0.82). An open gap has no such support.
/// </remarks>
internal static class StandOff
{
    /// <summary>k_c = 1 / √(1 + (8 · κ · c / (1.5 · y · d))²), with y the ratio of yield to tensile strength.</summary>
    public static double Factor<S>(double gapM, double diameterM, double ratio, double yieldRatio, ref S log)
        where S : struct, ISteps
    {
        // F_R / M_R = κ R_m (π d²/4) / (1.5 (π d³/32) y R_m) = 8 κ / (1.5 y d)
        // A bolt of no width takes no bending at all: the quotient is then +∞, and the factor 0.
        double bending = 8 * ratio * gapM / (1.5 * yieldRatio * diameterM);
        double factor = 1 / Math.Sqrt(1 + (bending * bending));
        log.Add(ShearBoltSteps.StandOff, factor);
        return factor;
    }
}
