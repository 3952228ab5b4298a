using Driveline.Provenance;

namespace Driveline.Fasteners;

/// <summary>Printed proof and tensile loads, by grade and thread.</summary>
internal static class PublishedLoads
{
    public static Sourced? Tensile(BoltGrade grade, ScrewThread thread) => null;

    public static Sourced? Proof(BoltGrade grade, ScrewThread thread) => null;
}
