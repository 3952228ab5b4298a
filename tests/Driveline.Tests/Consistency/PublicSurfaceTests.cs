#if !NETSTANDARD_BUILD
using System.Reflection;
using System.Text.RegularExpressions;
using Driveline.Cases;
using Driveline.Provenance;
using Driveline.Reports;
using Driveline.Wording;

namespace Driveline.Tests.Consistency;

/// <summary>What is public is shown to a caller, or comes with what is; and it does not grow unseen.</summary>
/// <remarks>
/// Where to look when a test fails: a type that no page shows and no shown type gives or takes is to be internal (the packages share
/// internals), or belongs into the table or an example of shared/docs/from-code.md. Types and members are counted as the approved files
/// list them; enum values, string codes and the answers of OwnerFacts are not, nor types that hold nothing else.
/// </remarks>
public partial class PublicSurfaceTests
{
    private const int MostTypes = 300;
    private const int MostMembers = 2300;

    private static readonly string[] Packages = ["Driveline", "Driveline.Wording", "Driveline.Cases", "Driveline.Reports"];

    [Fact]
    public void PublicType_EachOfThePackages_IsShownOrComesWithWhatIsShown()
    {
        HashSet<Type> ours = [.. new[] { typeof(Basis), typeof(Texts), typeof(CaseReader), typeof(VerdictText) }
            .SelectMany(t => t.Assembly.GetExportedTypes()).Where(t => !t.IsNested)];
        HashSet<string> shown = Shown();
        var open = new Queue<Type>(ours.Where(t => shown.Contains(t.Name.Split('`')[0])));
        HashSet<Type> reached = [.. open];
        while (open.Count > 0)
        {
            foreach (Type type in ComesWith(open.Dequeue()).SelectMany(Parts).Where(t => ours.Contains(t) && reached.Add(t)))
            {
                open.Enqueue(type);
            }
        }

        string[] unseen = [.. ours.Except(reached).Select(t => t.FullName!).Order(StringComparer.Ordinal)];
        Assert.True(unseen.Length == 0, "neither shown nor given by what is shown: " + string.Join(", ", unseen));
    }

    [Fact]
    public void PublicSurface_OfThePackages_StaysAsSmallAsItIs()
    {
        int types = 0;
        int members = 0;
        foreach (string[] lines in Packages.Select(p => File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "approved", p + ".txt"))))
        {
            (int typesOf, int membersOf) = Count(lines);
            types += typesOf;
            members += membersOf;
        }

        Assert.True(types <= MostTypes, types + " public types; at most " + MostTypes);
        Assert.True(members <= MostMembers, members + " public members; at most " + MostMembers);
    }

    // In code of a page: `between ticks`, in a block of C#, or in a program beside the pages. changes.md tells what has been, not what is.
    private static HashSet<string> Shown()
    {
        string folder = Path.Combine(AppContext.BaseDirectory, "docs");
        IEnumerable<string> pages = Directory.GetFiles(folder, "*.md").Where(f => Path.GetFileName(f) != "changes.md")
            .SelectMany(f => Code().Matches(File.ReadAllText(f)).Select(m => m.Value));
        IEnumerable<string> programs = Directory.GetFiles(folder, "*.cs").Select(File.ReadAllText);
        return [.. pages.Concat(programs).SelectMany(c => Word().Matches(c).Select(m => m.Value))];
    }

    private static IEnumerable<Type> ComesWith(Type type)
    {
        const BindingFlags All = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static
            | BindingFlags.DeclaredOnly;
        IEnumerable<MethodBase> methods = type.GetMethods(All).Concat<MethodBase>(type.GetConstructors(All))
            .Where(m => m.IsPublic || m.IsFamily || m.IsFamilyOrAssembly);
        return methods.SelectMany(m => m.GetParameters().Select(p => p.ParameterType))
            .Concat(methods.OfType<MethodInfo>().Select(m => m.ReturnType))
            .Concat(type.GetFields(All).Where(f => f.IsPublic || f.IsFamily).Select(f => f.FieldType))
            .Concat(type.GetInterfaces()).Concat(type.BaseType is { } parent ? [parent] : []);
    }

    private static IEnumerable<Type> Parts(Type type) => type.HasElementType ? Parts(type.GetElementType()!)
        : type.IsGenericType ? type.GetGenericArguments().SelectMany(Parts).Append(type.GetGenericTypeDefinition())
        : [type];

    // A type that holds nothing but codes is none of the counted; a group of answers in OwnerFacts is such a type.
    private static (int Types, int Members) Count(string[] lines)
    {
        var types = new List<(int Members, int Codes)>();
        foreach (string line in lines.Where(l => Declaration().IsMatch(l)))
        {
            if (TypeDeclaration().IsMatch(line))
            {
                types.Add((0, 0));
                continue;
            }

            bool isCode = CodeDeclaration().IsMatch(line);
            types[^1] = (types[^1].Members + (isCode ? 0 : 1), types[^1].Codes + (isCode ? 1 : 0));
        }

        return (types.Count(t => t.Members > 0 || t.Codes == 0), types.Sum(t => t.Members));
    }

    [GeneratedRegex("```csharp.*?```|`[^`\n]+`", RegexOptions.Singleline)]
    private static partial Regex Code();

    [GeneratedRegex(@"\w+")]
    private static partial Regex Word();

    [GeneratedRegex("^ +(public|protected) ")]
    private static partial Regex Declaration();

    [GeneratedRegex(@"^ +public (\w+ )*(class|struct|interface|enum|delegate) ")]
    private static partial Regex TypeDeclaration();

    [GeneratedRegex(@" const string | static readonly Driveline\.Advice\.Fact ")]
    private static partial Regex CodeDeclaration();
}
#endif
