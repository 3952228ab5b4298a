using System.Globalization;
using FsCheck.Xunit;

namespace Driveline;

/// <summary>A property over random inputs of a fresh seed; with DRIVELINE_LAWS=20 each is tried twenty times as often.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class LawAttribute : PropertyAttribute
{
    private const int Usual = 100;

    private static readonly int Times =
        int.TryParse(Environment.GetEnvironmentVariable("DRIVELINE_LAWS"), NumberStyles.None, CultureInfo.InvariantCulture, out int times)
            ? Math.Max(1, times) : 1;

    public LawAttribute() => MaxTest = Usual;

    /// <summary>How often it is tried when nothing is asked for.</summary>
    public new int MaxTest
    {
        get => base.MaxTest;
        set => base.MaxTest = value * Times;
    }
}
