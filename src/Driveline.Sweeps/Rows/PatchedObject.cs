using Driveline.Cases.Members;

namespace Driveline.Sweeps.Rows;

/// <summary>An object of a case that values are put into, row by row, by one thread.</summary>
internal sealed class PatchedObject
{
    public PatchedObject(CaseObject made, StatedFact[] facts, PatchedObject[] inner)
    {
        Object = made;
        Facts = facts;
        Inner = inner;
    }

    public CaseObject Object { get; }

    /// <summary>The facts of the object itself: what is changed here is changed in it.</summary>
    public StatedFact[] Facts { get; }

    /// <summary>The objects in it that are changed too, in the order of the patch.</summary>
    public PatchedObject[] Inner { get; }
}
