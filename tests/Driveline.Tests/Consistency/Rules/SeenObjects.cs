using System.Reflection;
using System.Runtime.CompilerServices;

namespace Driveline.Tests.Consistency.Rules;

/// <summary>For walks from a result through its properties: each object once, by reference.</summary>
internal static class SeenObjects
{
    public static IEqualityComparer<object> Comparer { get; } = new SameObject();

    /// <summary>What a property holds; null where it throws, as an answer that does not hold for the object.</summary>
    public static object? Value(PropertyInfo property, object of)
    {
        try
        {
            return property.GetValue(of);
        }
        catch (TargetInvocationException)
        {
            return null;
        }
    }

    private sealed class SameObject : IEqualityComparer<object>
    {
        public new bool Equals(object? x, object? y) => ReferenceEquals(x, y);

        public int GetHashCode(object obj) => RuntimeHelpers.GetHashCode(obj);
    }
}
