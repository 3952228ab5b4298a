using Driveline.Provenance;
using Driveline.Pto;

namespace Driveline.Tests.Pto;

public class PtoTypesPublished
{
    [Theory]
    [InlineData(1, 35, 6, nameof(SplineForm.Straight), 540, "ISO 500-1:2014, 4.1-4.3, as read in public copies")]
    [InlineData(2, 35, 21, nameof(SplineForm.Involute), 1000, "ISO 500-1:2014, 4.1-4.3, as read in public copies")]
    [InlineData(3, 45, 20, nameof(SplineForm.Involute), 1000, "ISO 500-1:2014, 4.1-4.3, as read in public copies")]
    [InlineData(4, 57.5, 22, nameof(SplineForm.Involute), 1300, "ISO 500-1:2014, 4.1-4.3; the copy prints 57.5 cm, a misprint")]
    public void PtoType_Geometry_IsAsPublished(int number, double mm, int splines, string form, double perMinute, string source)
    {
        PtoType type = PtoTypes.Of(number);
        Close.Absolute(mm, type.NominalDiameter.Millimeters, 1e-9, source);
        Assert.Equal(splines, type.SplineCount);
        Assert.Equal(form, type.SplineForm.ToString());
        Close.Absolute(perMinute, type.RatedSpeed.RevolutionsPerMinute, 1e-6, source);
        Assert.Equal(BasisKind.Published, type.GeometryBasis.Kind);
    }
}
