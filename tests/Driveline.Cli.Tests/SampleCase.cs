namespace Driveline.Cli.Tests;

/// <summary>Invented cases as text.</summary>
internal static class SampleCase
{
    /// <summary>A case in which nothing but a tube and an unmarked bolt is stated.</summary>
    public const string Bare = """
        { "title": "Bare", "driveline": [ { "shaft": "drive tube", "damagedAt": "2100 N.m" },
          { "shearBolt": { "thread": "1/2-13 UNC" } } ] }
        """;
}
