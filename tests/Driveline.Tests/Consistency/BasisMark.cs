namespace Driveline.Tests.Consistency;

/// <summary>The four kinds of basis, as the sources write them.</summary>
internal enum BasisMark
{
    FromMemory = 0,
    CommonPractice,
    Given,
    Published,
}
