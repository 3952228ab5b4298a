using System.Collections;
using System.Reflection;

namespace Driveline.Tests.Consistency.Rules;

/// <summary>What holds for the public surface of each package; each rule lists those that break it.</summary>
internal static class SurfaceRules
{
    private const BindingFlags Own = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    // Of each the first value says something by itself, and is what a caller who states nothing expects.
    private static readonly Dictionary<string, string> MeaningfulFirst = new()
    {
        ["BatchOutcome"] = "refused: nothing was taken",
        ["BasisKind"] = "the weakest basis: a number of which nothing is said is trusted least",
        ["DisplayUnits"] = "metric, the default of every text",
        ["Language"] = "English, the default of every text",
        ["LadderRungKind"] = "a list of places on the ladder; no rung is made without one",
        ["LimitKind"] = "the weakest source of a limit: it never gives a Yes or a No",
        ["PressureAssumption"] = "both ends are carried: the widest band",
        ["QuantityKind"] = "a text: shown as it is, never turned into a number",
        ["ResultKind"] = "a list of documents; no document is made without one",
        ["RowTrouble"] = "a list of troubles; no trouble is told without one",
        ["SeenDefect"] = "a list of defects; none is told without one",
        ["Severity"] = "the worst: a finding of which nothing is said is taken for danger",
        ["SheetEnd"] = "a sum with one result",
        ["StateFormat"] = "none: 0 is no format that was ever stored, and is refused",
        ["SupposedQuantity"] = "a list of quantities; none is supposed without one",
    };

    private static readonly string[] NothingStated = ["NotKnown", "None", "Nothing", "NotStated", "NotGuarded"];

    /// <summary>Members with a parameter that may be left out: its value is compiled into the caller and can never change.</summary>
    public static IEnumerable<string> OptionalParameters(Assembly of) => Members(of).OfType<MethodBase>()
        .Where(m => m.GetParameters().Any(p => p.IsOptional || p.HasDefaultValue)).Select(Name);

    /// <summary>Properties and fields that a caller could set after construction.</summary>
    public static IEnumerable<string> Settable(Assembly of) => Members(of)
        .Where(m => m is PropertyInfo { SetMethod.IsPublic: true } or FieldInfo { IsInitOnly: false, IsLiteral: false })
        .Select(Name);

    /// <summary>Properties and fields of a type whose content a caller could change.</summary>
    public static IEnumerable<string> ChangeableContent(Assembly of) => Members(of)
        .Select(m => (Member: m, Type: (m as PropertyInfo)?.PropertyType ?? (m as FieldInfo)?.FieldType))
        .Where(m => m.Type is not null && IsChangeable(m.Type)).Select(m => Name(m.Member));

    /// <summary>Enums whose default says what nobody stated.</summary>
    public static IEnumerable<string> DefaultsOfNoMeaning(Assembly of) => Types(of).Where(t => t.IsEnum)
        .Where(t => !MeaningfulFirst.ContainsKey(t.Name) && !NothingStated.Contains(Enum.GetName(t, Enum.ToObject(t, 0))))
        .Select(t => t.Name);

    /// <summary>
    /// Types that are equal by value in one way and not in another: without the typed method, the hash, or a structure's operators.
    /// </summary>
    /// <remarks>The operators of a class tell whether it is the same object, as of every class.</remarks>
    public static IEnumerable<string> HalfEquality(Assembly of) => Types(of)
        .Where(t => t is { IsEnum: false, IsInterface: false } && (t.IsValueType || Declares(t, nameof(Equals), typeof(object))))
        .Where(t => !(typeof(IEquatable<>).MakeGenericType(t).IsAssignableFrom(t) && Declares(t, nameof(Equals), typeof(object))
            && Declares(t, nameof(GetHashCode)) && t.IsValueType == HasOperators(t)))
        .Select(t => t.Name);

    /// <summary>Types with a quantity of their own that print as the name of their type.</summary>
    public static IEnumerable<string> WithoutWords(Assembly of) => Types(of)
        .Where(t => t is { IsEnum: false, IsInterface: false, IsAbstract: false })
        .Where(t => t.GetProperties(Own).Any(p => IsQuantity(p.PropertyType)) && Words(t) is var by
            && (by == typeof(object) || by == typeof(ValueType)))
        .Select(t => t.Name);

    /// <summary>The public members that a package declares, without those of enums and delegates, and without accessors.</summary>
    public static IEnumerable<MemberInfo> Members(Assembly of) => Types(of)
        .Where(t => !t.IsEnum && !typeof(Delegate).IsAssignableFrom(t)).SelectMany(t => t.GetMembers(Own))
        .Where(m => m is not Type && m is not MethodInfo { IsSpecialName: true } || m.Name.StartsWith("op_", StringComparison.Ordinal));

    /// <summary>The public types that a package declares, without those that a generator of Orleans adds.</summary>
    public static IEnumerable<Type> Types(Assembly of) =>
        of.GetExportedTypes().Where(t => t.Namespace?.StartsWith("Driveline", StringComparison.Ordinal) == true);

    public static string Name(MemberInfo member) => member.DeclaringType!.Name + "." + member.Name;

    private static bool HasOperators(Type type) =>
        type.GetMethod("op_Equality") is not null && type.GetMethod("op_Inequality") is not null;

    private static Type? Words(Type type) => type.GetMethod(nameof(ToString), Type.EmptyTypes)!.DeclaringType;

    private static bool IsQuantity(Type type) => (Nullable.GetUnderlyingType(type) ?? type) is var plain
        && (plain.Namespace == "UnitsNet" || typeof(Driveline.Quantities.QuantityBand).IsAssignableFrom(plain));

    private static bool IsChangeable(Type type) => type.IsArray
        || (typeof(IList).IsAssignableFrom(type) || typeof(IDictionary).IsAssignableFrom(type))
        || (type.IsGenericType && type.GetGenericTypeDefinition() is var open
            && (open == typeof(IList<>) || open == typeof(ICollection<>) || open == typeof(IDictionary<,>) || open == typeof(ISet<>)
                || open == typeof(HashSet<>) || open == typeof(Span<>) || open == typeof(Memory<>)));

    private static bool Declares(Type type, string name, params Type[] parameters) =>
        type.GetMethod(name, Own, binder: null, parameters, modifiers: null) is not null;
}
