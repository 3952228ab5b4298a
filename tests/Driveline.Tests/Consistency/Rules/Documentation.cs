using System.Reflection;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Driveline.Tests.Consistency.Rules;

/// <summary>What the documentation of a package says, as its reader gets it beside the assembly.</summary>
internal sealed partial class Documentation
{
    // The values they work on were checked when their object was made.
    private static readonly string[] CheckedBefore = ["BoltStrength.Calculation", "Hardness.TryToTensile"];

    private readonly Dictionary<string, XElement> members;

    private Documentation(Dictionary<string, XElement> members) => this.members = members;

    public static Documentation Of(Assembly assembly) => new(XDocument.Load(Path.ChangeExtension(assembly.Location, ".xml"))
        .Descendants("member").ToDictionary(m => (string)m.Attribute("name")!));

    /// <summary>Numbers without a unit: neither their name nor their text says in what they count.</summary>
    public IEnumerable<string> NumbersWithoutUnit(Assembly of) => SurfaceRules.Members(of)
        .Where(m => HasNumber(m) && !SaysUnit(m)).Select(SurfaceRules.Name).Distinct();

    /// <summary>Members that throw for bad arguments and do not say so.</summary>
    public IEnumerable<string> UntoldErrors(Assembly of) => SurfaceRules.Members(of).OfType<MethodBase>()
        .Where(m => Throwing.ForArguments(m) && !Text(m).Contains("<exception", StringComparison.Ordinal)
            && !Text(m).Contains("<inheritdoc", StringComparison.Ordinal))
        .Select(SurfaceRules.Name).Distinct().Except(CheckedBefore);

    /// <summary>Public members and types without a word.</summary>
    public IEnumerable<string> Undocumented(Assembly of) => SurfaceRules.Members(of).Concat(SurfaceRules.Types(of))
        .Where(m => !(m is ConstructorInfo { DeclaringType.IsValueType: false } c && c.GetParameters().Length == 0 && Text(c).Length == 0)
            && !Text(m).Contains("<summary", StringComparison.Ordinal) && !Text(m).Contains("<inheritdoc", StringComparison.Ordinal))
        .Select(m => m is Type t ? t.Name : SurfaceRules.Name(m)).Distinct();

    private static bool HasNumber(MemberInfo member) => member switch
    {
        MethodInfo { Name: var name } when name.StartsWith("op_", StringComparison.Ordinal) => false,
        MethodInfo method => IsNumber(method.ReturnType) || method.GetParameters().Any(p => IsNumber(p.ParameterType)),
        ConstructorInfo made => made.GetParameters().Any(p => IsNumber(p.ParameterType)),
        PropertyInfo property => IsNumber(property.PropertyType),
        FieldInfo field => IsNumber(field.FieldType),
        _ => false,
    };

    private static bool IsNumber(Type type) => type == typeof(double) || type == typeof(double?) || type == typeof(double).MakeByRefType();

    private bool SaysUnit(MemberInfo member) => UnitInName().IsMatch(member.Name) || Unit().IsMatch(Text(member))
        || Unit().IsMatch(Text(member.DeclaringType!))
        || (member is MethodBase method
            && method.GetParameters().Where(p => IsNumber(p.ParameterType)).All(p => UnitInName().IsMatch(p.Name!)));

    private string Text(MemberInfo member) => members.TryGetValue(Id(member), out XElement? text) ? text.ToString() : "";

    private static string Id(MemberInfo member) => member switch
    {
        Type type => "T:" + TypeName(type),
        PropertyInfo property => "P:" + TypeName(property.DeclaringType!) + "." + property.Name + Parameters(property.GetIndexParameters()),
        FieldInfo field => "F:" + TypeName(field.DeclaringType!) + "." + field.Name,
        EventInfo happening => "E:" + TypeName(happening.DeclaringType!) + "." + happening.Name,
        ConstructorInfo made => "M:" + TypeName(made.DeclaringType!) + ".#ctor" + Parameters(made.GetParameters()),
        MethodInfo method => "M:" + TypeName(method.DeclaringType!) + "." + method.Name
            + (method.IsGenericMethod ? "``" + method.GetGenericArguments().Length : "") + Parameters(method.GetParameters())
            + (method.Name is "op_Implicit" or "op_Explicit" ? "~" + Written(method.ReturnType) : ""),
        _ => "",
    };

    private static string TypeName(Type type) => type.FullName!.Replace('+', '.');

    private static string Parameters(ParameterInfo[] parameters) =>
        parameters.Length == 0 ? "" : "(" + string.Join(",", parameters.Select(p => Written(p.ParameterType))) + ")";

    private static string Written(Type type) => type switch
    {
        { IsByRef: true } => Written(type.GetElementType()!) + "@",
        { IsArray: true } => Written(type.GetElementType()!)
            + (type.GetArrayRank() == 1 ? "[]" : "[" + string.Join(",", Enumerable.Repeat("0:", type.GetArrayRank())) + "]"),
        { IsGenericMethodParameter: true } => "``" + type.GenericParameterPosition,
        { IsGenericParameter: true } => "`" + type.GenericParameterPosition,
        { IsGenericType: true } => Open(type) + "{" + string.Join(",", type.GetGenericArguments().Select(Written)) + "}",
        _ => TypeName(type),
    };

    private static string Open(Type type) => TypeName(type.GetGenericTypeDefinition()).Split('`')[0];

    [GeneratedRegex("(Nm|NewtonMeters|RadPerS|PerHour|Rad|Joule|Second|Pa|Hours|Minutes|Months|Years|Turns|Cycles|Ratio|Share|Factor"
        + "|Margin|Count|[a-z](S|J|K|M|N|W)s?)$", RegexOptions.IgnoreCase)]
    private static partial Regex UnitInName();

    [GeneratedRegex(@"N·m|\bkg|\bmm\b|\bm\b|\brad\b|\bs\b|\bJ\b|\bK\b|\bW\b|\bPa\b|\bMPa\b|\bHR[A-Z]+|\bSI\b|\b1/|%|"
        + @"\b(ratio|share|fraction|factor|quotient|coefficient|times|margin|turns?|cycles?|coils?|count|number of|relative|px"
        + @"|probability|efficiency|scale|hours?|minutes?|months?|years?|seconds?|a day|bits?|price|money|amount|currency|without unit|unit"
        + @"|per cent|from 0 to 1)\b",
        RegexOptions.IgnoreCase)]
    private static partial Regex Unit();
}
