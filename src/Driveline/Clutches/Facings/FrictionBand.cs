using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Clutches;

/// <summary>Friction of a pair of faces in one surface state: while slipping, and to start it.</summary>
/// <remarks>
/// Breakaway without a printed value is running × 1.0 to 1.4, expected 1.2: the only dry pair printed
/// (sintered metal, 0.36 static over 0.30 sliding) gives 1.20; nothing printed bounds it from above, so the
/// high end is from memory. Faces stuck by rust are outside this band: see <see cref="SlipTrust"/>.
/// </remarks>
internal sealed class FrictionBand
{
    internal static readonly BandBasis BreakawayRatioBasis = new(
        Basis.CommonPractice("breakaway is not below running friction"),
        Basis.Published("Tribology Handbook", "2nd ed.", "Table 7.4, sintered metal: 0.36 / 0.30"),
        Basis.FromMemory("breakaway up to 1.4 times running friction of clean dry faces"),
        BandEnd.Interval95,
        BandEnd.Interval95);

    internal static readonly Band BreakawayRatio = new(1.0, 1.2, 1.4);

    internal FrictionBand(SurfaceState state, RatioBand running, RatioBand breakaway)
    {
        State = state;
        Running = running;
        Breakaway = breakaway;
    }

    /// <summary>The surface state it holds for.</summary>
    public SurfaceState State { get; }

    /// <summary>Friction coefficient while the faces slip [-].</summary>
    public RatioBand Running { get; }

    /// <summary>Friction coefficient that must be overcome to start a slip [-]; faces free of rust.</summary>
    public RatioBand Breakaway { get; }

    /// <inheritdoc/>
    public override string ToString() => State + ": running " + Running + "; breakaway " + Breakaway;
}
