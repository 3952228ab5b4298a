using System.Collections;
using System.Reflection;

namespace Driveline.Tests.Consistency.Rules;

/// <summary>Lists that a caller could cast to what holds them and change, for everybody else who reads them.</summary>
internal static class ChangeableLists
{
    // A row of a table has a basis, which has a source; a neighbour's verdict has neighbours of its own, and so on.
    private const int Deepest = 8;

    /// <summary>Members through which what a package shares between all callers can be changed: its tables and catalogues.</summary>
    public static IEnumerable<string> Shared(Assembly of)
    {
        var found = new SortedSet<string>(StringComparer.Ordinal);
        var seen = new HashSet<object>(SeenObjects.Comparer);
        foreach (MemberInfo member in SurfaceRules.Types(of).SelectMany(t => t.GetMembers(BindingFlags.Public | BindingFlags.Static)))
        {
            object? value = member switch
            {
                PropertyInfo property when property.GetIndexParameters().Length == 0 => property.GetValue(null),
                FieldInfo field => field.GetValue(null),
                MethodInfo { IsSpecialName: false, IsGenericMethod: false } method when method.GetParameters().Length == 0
                    && method.ReturnType != typeof(void) => method.Invoke(null, null),
                _ => null,
            };
            Walk(value, SurfaceRules.Name(member), 0, seen, found);
        }

        return found;
    }

    /// <summary>Members through which a result can be changed, by whoever else holds it.</summary>
    public static IReadOnlyCollection<string> In(object result)
    {
        var found = new SortedSet<string>(StringComparer.Ordinal);
        Walk(result, result.GetType().Name, 0, new HashSet<object>(SeenObjects.Comparer), found);
        return found;
    }

    /// <summary>Whether the list or dictionary lets a caller change what it holds.</summary>
    public static bool IsChangeable(object list) => list switch
    {
        Array array => array.Length > 0,
        IList plain => !plain.IsReadOnly,
        IDictionary dictionary => !dictionary.IsReadOnly,
        _ => list.GetType().GetInterfaces()
            .Any(i => i.IsGenericType && i.GetGenericTypeDefinition() == typeof(ICollection<>)
                && i.GetProperty(nameof(IList.IsReadOnly))!.GetValue(list) is false),
    };

    private static void Walk(object? value, string by, int depth, HashSet<object> seen, SortedSet<string> found)
    {
        if (value is null or string || depth > Deepest || value.GetType().IsPrimitive)
        {
            return;
        }

        if (value is IEnumerable list)
        {
            if (IsChangeable(list))
            {
                found.Add(by + " is " + list.GetType().Name);
            }

            foreach (object? item in list)
            {
                Walk(item, by, depth + 1, seen, found);
            }

            return;
        }

        if (value.GetType() is not { IsEnum: false } type || type.Namespace?.StartsWith("Driveline", StringComparison.Ordinal) != true
            || (!type.IsValueType && !seen.Add(value)))
        {
            return;
        }

        foreach (PropertyInfo property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(p => p.GetIndexParameters().Length == 0 && !p.PropertyType.IsByRefLike))
        {
            Walk(SeenObjects.Value(property, value), property.DeclaringType!.Name + "." + property.Name, depth + 1, seen, found);
        }
    }
}
