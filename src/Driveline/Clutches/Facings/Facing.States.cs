using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Clutches;

/// <content>Friction by surface state.</content>
public sealed partial class Facing
{
    // Share of the dry value that may be left, low and expected. Nothing printed gives them; the high end stays dry, except of damp faces.
    private const double HotLow = 0.7;
    private const double HotExpected = 0.85;
    private const double DampLow = 0.7;
    private const double DampExpected = 0.85;
    private const double DampHigh = 1.1;
    private const double DampBreakaway = 1.3;
    private const double GlazedLow = 0.5;
    private const double GlazedExpected = 0.7;

    // The lowest running friction printed for a plain facing under oil, with the scatter below.
    private const double LeastOiled = 0.04;

    // Half the width of a friction class, and never more than a quarter of the value.
    private const double HalfClass = 0.05;
    private const double LargestShare = 0.25;

    private static readonly Basis DampRemembered = Basis.FromMemory(
        "damp faces: friction rises by water bridges and after standing, printed only in its direction");
    private static readonly Basis Remembered = Basis.FromMemory("loss of friction when hot, damp or glazed");
    private static readonly Basis LeastOiledBasis =
        Basis.Published("Tribology Handbook", "2nd ed.", "Table 7.4, moulded facing in oil");

    /// <summary>The friction in a surface state.</summary>
    /// <remarks>
    /// Dry: as stated. Hot: 0.7 to 1 times dry, expected 0.85 (as stated when it is). Damp: 0.7 to 1.1 times dry, expected 0.85, and what
    /// starts a slip up to 1.3 times as much as of dry faces. Clean in work: 0.7 to 1, expected 1; faces that stand damp are to be told as
    /// damp. Glazed: 0.5 to 1, expected 0.7. Oiled: from the value under oil up to dry, expected half-way. Not known: the lowest of all up
    /// to the highest of all. The shares are from memory: only their direction is printed. Fade lowers friction above the permitted
    /// temperature; a film of water lowers it (Wear 321 (2014) 8), little water raises it, above all when still (Wear 302 (2013) 1397,
    /// SAE 2016-01-0411).
    /// No other state ends below dry at the high end, so that a doubtful state never makes a clutch look weaker than it may be.
    /// </remarks>
    /// <param name="state">The state of the faces.</param>
    /// <exception cref="ArgumentOutOfRangeException">The state is not one of the enumeration.</exception>
    /// <example>Dry 0.30 to 0.40, expected 0.35; hot: 0.21 to 0.40, expected 0.2975.</example>
    internal FrictionBand Friction(SurfaceState state)
    {
        Band d = dry.SiBand;
        RatioBand running = state switch
        {
            SurfaceState.Dry => dry,
            SurfaceState.Hot => hot is null ? Reduced(HotLow, HotExpected) : Spanned(hot.SiBand, hot.Basis.Weakest),
            SurfaceState.Damp => Raised(Reduced(DampLow, DampExpected)),
            SurfaceState.CleanInWork => Reduced(Math.Min(CleanShare(), 1), 1),
            SurfaceState.Glazed => Reduced(GlazedLow, GlazedExpected),
            SurfaceState.Oiled => OiledBand(d, (OiledLow() + d.Expected) / 2),
            SurfaceState.NotKnown => Raised(OiledBand(d, d.Expected)),
            _ => throw new ArgumentOutOfRangeException(nameof(state), state, "No friction is held for that surface state."),
        };
        return new FrictionBand(state, running, Still(BreakawayOf(running, state), state));
    }

    /// <summary>How far the high end of a torque of dry faces may rise in a state: while slipping, and at the first movement.</summary>
    internal static (double Running, double Breakaway) RiseOf(SurfaceState state) =>
        state is SurfaceState.Damp or SurfaceState.NotKnown ? (DampHigh, DampBreakaway) : (1, 1);

    /// <summary>The same facing with its friction scaled to a reading, whose spread it takes.</summary>
    internal Facing Measured(double scale, TorqueBand read)
    {
        Band r = read.SiBand;
        double expected = dry.SiBand.Expected * scale;
        RatioBand measured = RatioBand.OfSi(new Band(expected * r.Low / r.Expected, expected, expected * r.High / r.Expected), read.Basis);
        RatioBand underOil = RatioBand.OfSi(
            Band.Exactly(OiledLow() * scale), BandBasis.Of(oiled is null ? LeastOiledBasis : oiled.Basis.Weakest));
        return new Facing(Name, measured, Scaled(breakaway, scale), Scaled(hot, scale), underOil, Limits, Thermal, LimitBasis);
    }

    internal static RatioBand OnePrinted(double mu, Basis basis)
    {
        double half = Math.Min(HalfClass, LargestShare * mu);
        Basis ends = Basis.Weakest(
            basis, Basis.CommonPractice("one printed value, spread by half a friction class (0.05), at most a quarter of it"));
        return RatioBand.Between(mu - half, mu, mu + half, new BandBasis(ends, basis, ends, BandEnd.Interval95, BandEnd.Interval95));
    }

    internal static RatioBand PrintedRange(double low, double high, Basis basis) =>
        RatioBand.Between(low, (low + high) / 2, high, new BandBasis(basis, basis, basis, BandEnd.Interval95, BandEnd.Interval95));

    /// <summary>What may be left of a dry torque in clean work: the lower of the hot and damp shares.</summary>
    internal double CleanShare()
    {
        double low = dry.SiBand.Low;
        double hotShare = hot is null || low == 0 ? HotLow : hot.SiBand.Low / low;
        return Math.Min(1, Math.Min(hotShare, DampLow));
    }

    private double OiledLow() =>
        Math.Min(dry.SiBand.Low, oiled?.SiBand.Low ?? (LeastOiled * (1 - LargestShare)));

    private RatioBand Reduced(double low, double expected)
    {
        Band d = dry.SiBand;
        Basis expectedBasis = expected < 1 ? Basis.Weakest(dry.Basis.Expected, Remembered) : dry.Basis.Expected;
        return RatioBand.OfSi(
            new Band(d.Low * low, Math.Max(d.Low * low, d.Expected * expected), d.High),
            new BandBasis(Basis.Weakest(dry.Basis.Low, Remembered), expectedBasis, dry.Basis.High, BandEnd.Interval95, dry.Basis.HighEnd));
    }

    private static RatioBand? Scaled(RatioBand? band, double scale) => band is null ? null
        : RatioBand.OfSi(band.SiBand.Times(scale), band.Basis);

    private static RatioBand Raised(RatioBand band) => Raised(band, DampHigh);

    private static RatioBand Raised(RatioBand band, double share)
    {
        Band b = band.SiBand;
        BandBasis basis = band.Basis;
        return RatioBand.OfSi(
            new Band(b.Low, b.Expected, b.High * share),
            new BandBasis(basis.Low, basis.Expected, Basis.Weakest(basis.High, DampRemembered), basis.LowEnd, BandEnd.Interval95));
    }

    // Breakaway of faces that may be damp, over dry ones; a breakaway computed from the running friction has risen with it already.
    private RatioBand Still(RatioBand band, SurfaceState state) => RiseOf(state).Breakaway is var rise && rise > 1
        ? Raised(band, breakaway is null ? rise / DampHigh : rise)
        : band;

    // The stated state down, but never lower at the high end than dry.
    private RatioBand Spanned(Band stated, Basis basis)
    {
        double high = Math.Max(stated.High, dry.SiBand.High);
        return RatioBand.OfSi(
            new Band(Math.Min(stated.Low, dry.SiBand.Low), stated.Expected, high),
            BandBasis.Of(Basis.Weakest(basis, dry.Basis.High)));
    }

    private RatioBand OiledBand(Band d, double expected)
    {
        double low = Math.Min(OiledLow(), d.Low * GlazedLow);
        Basis basis = oiled is null ? LeastOiledBasis : oiled.Basis.Low;
        return RatioBand.OfSi(
            new Band(low, Math.Max(low, expected), d.High),
            new BandBasis(
                Basis.Weakest(basis, dry.Basis.Low),
                Basis.Weakest(Remembered, dry.Basis.Expected),
                dry.Basis.High,
                BandEnd.Interval95,
                dry.Basis.HighEnd));
    }

    private RatioBand BreakawayOf(RatioBand running, SurfaceState state)
    {
        if (breakaway is null)
        {
            return RatioBand.OfSi(
                running.SiBand.Times(FrictionBand.BreakawayRatio), BandBasis.Combine(running.Basis, FrictionBand.BreakawayRatioBasis));
        }

        if (state == SurfaceState.Dry)
        {
            return breakaway;
        }

        // Never below the running friction of that state, never above the stated dry breakaway.
        Band r = running.SiBand;
        Band b = breakaway.SiBand;
        double low = Math.Min(r.Low, b.Low);
        double expected = Math.Max(low, Math.Min(b.Expected, r.Expected * FrictionBand.BreakawayRatio.Expected));
        return RatioBand.OfSi(new Band(low, expected, Math.Max(b.High, expected)), BandBasis.Combine(running.Basis, breakaway.Basis));
    }
}
