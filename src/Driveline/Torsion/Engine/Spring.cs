namespace Driveline.Torsion;

/// <summary>A link that carries torque through its spring, laid out for the step's inner loop.</summary>
internal struct Spring
{
    public int Link;
    public int From;
    public int To;
    public int At;
    public int FromAt;
    public int ToAt;
    public double Stiffness;
    public double Damping;
}
