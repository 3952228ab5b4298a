namespace Driveline.Torsion;

/// <summary>One coordinate of the motion: the speed of a body by the root of its inertia, or a twist by that of its stiffness.</summary>
internal readonly struct ModalState
{
    public ModalState(int root, int link, double scale)
    {
        Root = root;
        Link = link;
        Scale = scale;
    }

    /// <summary>Root rotor of the body; −1 for a twist.</summary>
    public int Root { get; }

    /// <summary>Link whose twist it is; −1 for a speed.</summary>
    public int Link { get; }

    public double Scale { get; }
}
