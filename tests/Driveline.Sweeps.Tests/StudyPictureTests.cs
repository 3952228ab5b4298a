using System.Globalization;
using System.Text.RegularExpressions;
using Driveline.Cases;
using Driveline.Reports;

namespace Driveline.Sweeps.Tests;

public class StudyPictureTests
{
    private const string Shaft = "driveline[2].shearBolt.shaftDiameter";
    private const string Torque = "shearBolt.breakTorqueNm.expected";
    private const string Margin = "assess.guardMargin";

    private static readonly Lazy<StudyResult> Result = new(() => Sweep.Run(Study.Of("pictures")
        .WithCase(CaseReader.Read(File.ReadAllBytes(TestStudies.CaseFile("thornbeck-bolt-right"))).Case!)
        .WithFactors(Factor.Uniform(Shaft, 0.03, 0.034)).WithDesign(Design.Sobol(64, 1)).WithCaseOutputs(Torque, Margin)));

    [Fact]
    public void Scatter_OfQuantities_NamesTheirUnits()
    {
        string svg = StudyPicture.Scatter(Result.Value, Shaft, Torque);
        Assert.Contains(">" + Shaft + " (m)<", svg, StringComparison.Ordinal);
        Assert.Contains(">" + Torque + " (N·m)<", svg, StringComparison.Ordinal);
    }

    [Fact]
    public void Exceedance_OfAMargin_NamesNoUnit() =>
        Assert.Contains(">" + Margin + "<", StudyPicture.Exceedance(Result.Value, Margin), StringComparison.Ordinal);

    [Theory]
    [InlineData("tornado")]
    [InlineData("scatter")]
    [InlineData("exceedance")]
    public void Picture_AsWideAsAPhone_HasTextsThatCanBeRead(string kind)
    {
        ReportOptions phone = ReportOptions.Default.WithPictureWidth(360);
        string svg = kind switch
        {
            "tornado" => StudyPicture.Tornado(Result.Value, Torque, phone),
            "scatter" => StudyPicture.Scatter(Result.Value, Shaft, Torque, phone),
            _ => StudyPicture.Exceedance(Result.Value, Torque, phone),
        };
        Assert.Contains("viewBox=\"0 0 360 ", svg, StringComparison.Ordinal);
        double[] sizes = [.. Regex.Matches(svg, "font-size=\"([0-9.]+)\"")
            .Select(m => double.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture))];
        Assert.NotEmpty(sizes);
        Assert.True(sizes.Min() >= 12, FormattableString.Invariant($"{sizes.Min()} px"));
    }
}
