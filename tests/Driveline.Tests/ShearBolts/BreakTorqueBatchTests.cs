using Driveline.Provenance;
using Driveline.ShearBolts;

namespace Driveline.Tests.ShearBolts;

/// <summary>The span batch of the torque that breaks a bolt gives what its kernel does.</summary>
public class BreakTorqueBatchTests
{
    [Fact]
    public void NewtonMeters_SpansOfAnyLength_AreTheBitsOfTheKernel()
    {
        NoSteps none = default;
        for (int length = 0; length <= 20; length++)
        {
            double[] area = [.. Enumerable.Range(1, length).Select(k => 1e-5 / k)];
            double[] tau = [.. Enumerable.Range(1, length).Select(k => 3e8 + (1e6 / k))];
            double[] radius = [.. Enumerable.Range(1, length).Select(k => 0.05 / (k + 0.3))];
            double[] torque = new double[length];
            BreakTorque.NewtonMeters(3, area, tau, radius, torque);
            for (int k = 0; k < length; k++)
            {
                Assert.Equal(BreakTorque.NewtonMeters(3, area[k], tau[k], radius[k], ref none), torque[k]);
            }
        }
    }

    [Fact]
    public void Batch_ManyJoints_AllocatesNothing()
    {
        double[] area = new double[1000], tau = new double[1000], radius = new double[1000], torque = new double[1000];
        Array.Fill(area, 5e-5);
        Array.Fill(tau, 3e8);
        Array.Fill(radius, 0.06);
        BreakTorque.NewtonMeters(2, area, tau, radius, torque);
        long before = GC.GetAllocatedBytesForCurrentThread();
        BreakTorque.NewtonMeters(2, area, tau, radius, torque);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.All(torque, nm => Close.Absolute(1800, nm, 1e-9, "hand: 2 × 50 mm² × 300 MPa × 60 mm"));
    }

    [Fact]
    public void Batch_SpansOfDifferentLength_AreRefused()
    {
        var error = Assert.Throws<ArgumentException>(
            () => BreakTorque.NewtonMeters(1, new double[2], new double[2], new double[3], new double[2]));
        Assert.Contains("got 2, 2, 3 and 2", error.Message, StringComparison.Ordinal);
    }
}
