using Driveline.Fasteners;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.ShearBolts;

/// <summary>The area that a shear plane cuts: smallest, expected and greatest.</summary>
internal readonly struct PlaneAreas(double lowM2, double expectedM2, double highM2, BandBasis basis)
{
    public double LowM2 { get; } = lowM2;

    public double ExpectedM2 { get; } = expectedM2;

    public double HighM2 { get; } = highM2;

    public BandBasis AreaBasis { get; } = basis;

    /// <summary>The plain shank or pin, from its thinnest to its thickest body.</summary>
    public static PlaneAreas Plain(ShearBolt bolt)
    {
        if (bolt.Thread is not { } thread)
        {
            return OfDiameters(Band.Exactly(bolt.DiameterM), BandBasis.Of(Basis.Given("diameter of the pin")));
        }

        if (bolt.ShankM > 0)
        {
            return OfDiameters(Band.Exactly(bolt.ShankM), BandBasis.Of(Basis.Given("measured diameter of the shank")));
        }

        return thread.BodyDiameterOf(bolt.BodyStyle) is { } body
            ? OfDiameters(body.SiBand, body.Basis)
            : OfDiameters(
                Band.Exactly(thread.MajorDiameterM),
                    BandBasis.Of(Basis.CommonPractice("body taken at the nominal diameter: no tolerance held")));
    }

    /// <summary>A thread in the plane, nowhere more than the shank.</summary>
    public static PlaneAreas Threaded(ShearBolt bolt)
    {
        ScrewThread thread = bolt.Thread!;
        PlaneAreas plain = Plain(bolt);
        bool onStressArea = ShearRatios.Of(bolt.Material.ShearClass, PlaneThrough.Thread).LowArea == ShearArea.Stress;
        return new PlaneAreas(
            Math.Min(onStressArea ? thread.StressAreaM2 : thread.RootAreaM2, plain.LowM2),
            Math.Min(ThreadedArea.MeanM2(thread), plain.ExpectedM2),
            Math.Min(ThreadedArea.GreatestM2(thread), plain.HighM2),
            new BandBasis(
                onStressArea ? thread.AreaBasis : thread.RootAreaBasis,
                Basis.Weakest(thread.AreaBasis, ThreadedArea.MeanBasis(thread)),
                Basis.Weakest(thread.AreaBasis, ThreadedArea.GreatestBasis(thread)),
                BandEnd.Limit,
                BandEnd.Limit));
    }

    /// <summary>A neck, step or taper; anything up to the shank when its diameter is not known.</summary>
    public static PlaneAreas Neck(ShearBolt bolt)
    {
        if (bolt.NeckDiameterM > 0)
        {
            return OfDiameters(Band.Exactly(bolt.NeckDiameterM), BandBasis.Of(Basis.Given("diameter in the shear plane")));
        }

        PlaneAreas shank = Plain(bolt);
        Basis unknown = Basis.FromMemory("diameter in the shear plane not known");
        return new PlaneAreas(
            0, shank.HighM2, shank.HighM2, new BandBasis(unknown, unknown, shank.AreaBasis.High, BandEnd.Limit, BandEnd.Limit));
    }

    private static PlaneAreas OfDiameters(Band m, BandBasis basis) => new(Circle(m.Low), Circle(m.Expected), Circle(m.High), basis);

    private static double Circle(double diameterM) => Math.PI / 4 * diameterM * diameterM;
}
