using Driveline.Provenance;

namespace Driveline.Fasteners;

/// <summary>The printed loads of one grade in one thread, in the unit of the table.</summary>
internal sealed class PublishedLoad(string grade, string thread, double tensile, Basis tensileBasis, double proof, Basis proofBasis)
{
    public string Grade { get; } = grade;

    public string Thread { get; } = thread;

    public double Tensile { get; } = tensile;

    public Basis TensileBasis { get; } = tensileBasis;

    public double Proof { get; } = proof;

    public Basis ProofBasis { get; } = proofBasis;
}
