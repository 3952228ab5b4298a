using System.Reflection;
using Driveline.Cli.Tests.Examples;

namespace Driveline.Cli.Tests;

/// <summary>C# that a reader copies from a page is compiled, and prints what the page says.</summary>
public class DocsExampleTests
{
    // What stands for the reader's own around it, so that it is no program by itself.
    private static readonly string[] WithoutOutput = [nameof(ReadmeServiceExample)];

    public static TheoryData<string> Pages => [.. DocsPage.All.Where(p => DocsPage.Fragments(p).Any())];

    public static TheoryData<string> Printing => [.. Examples.Select(e => e.Name).Except(WithoutOutput)];

    private static IEnumerable<Type> Examples =>
        typeof(ReadmeExample).Assembly.GetTypes().Where(t => t.Namespace == typeof(ReadmeExample).Namespace && !t.IsNested);

    [Theory]
    [MemberData(nameof(Pages))]
    public void Page_EachBlockOfCSharp_IsACompiledExample(string page)
    {
        HashSet<string> compiled = [.. Examples.Select(e => DocsPage.Shown(e.Name))];
        Assert.All(DocsPage.Fragments(page), f => Assert.Contains(f, compiled));
    }

    [Theory]
    [MemberData(nameof(Printing))]
    public async Task Example_WhatItPrints_IsWhatItsPageSays(string example)
    {
        using var console = new StringWriter { NewLine = "\n" };
        Type type = Examples.Single(e => e.Name == example);
        if (type.GetMethod("Run", BindingFlags.Public | BindingFlags.Static)!.Invoke(null, [console]) is Task running)
        {
            await running;
        }

        string code = DocsPage.Shown(example);
        string page = DocsPage.All.Select(DocsPage.Text).First(t => t.Contains(code, StringComparison.Ordinal));
        Assert.True(page.Contains("```text\n" + console + "```", StringComparison.Ordinal), "The page does not show\n" + console);
    }
}
