using System.Collections;
using System.Collections.Concurrent;
using System.Globalization;
using System.Reflection;
using System.Security.Cryptography;
using System.Text;

namespace Driveline.Tests.Cases;

/// <summary>All that objects hold, down to the last bit, as one key. What has no state to compare is refused.</summary>
internal static class StateKey
{
    private const int Deepest = 20;

    private static readonly ConcurrentDictionary<Type, FieldInfo[]> FieldsOf = new();

    public static string Of(params object?[] roots)
    {
        var text = new StringBuilder();
        foreach (object? root in roots)
        {
            Write(text, root, 0);
        }

        return Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(text.ToString())));
    }

    private static void Write(StringBuilder text, object? value, int depth)
    {
        if (depth > Deepest || value is Delegate or MemberInfo)
        {
            throw new NotSupportedException("Its state cannot be compared: " + value);
        }

        switch (value)
        {
            case null:
                text.Append('~');
                break;
            case string s:
                text.Append(CultureInfo.InvariantCulture, $"\"{s.Length}:{s}");
                break;
            case double d:
                text.Append(CultureInfo.InvariantCulture, $"d{BitConverter.DoubleToInt64Bits(d):x}");
                break;
            case bool or int or long or Enum:
                text.Append(CultureInfo.InvariantCulture, $"i{Convert.ToInt64(value, CultureInfo.InvariantCulture)}");
                break;
            case IEnumerable items:
                text.Append('[');
                foreach (object? item in items)
                {
                    Write(text, item, depth + 1);
                }

                text.Append(']');
                break;
            default:
                text.Append('{').Append(value.GetType().FullName);
                foreach (FieldInfo field in FieldsOf.GetOrAdd(value.GetType(), Fields))
                {
                    Write(text, field.GetValue(value), depth + 1);
                }

                text.Append('}');
                break;
        }
    }

    private static FieldInfo[] Fields(Type type)
    {
        FieldInfo[] own = type.IsPrimitive || type.IsPointer
            ? throw new NotSupportedException("Its state cannot be compared: " + type)
            : type.GetFields(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly);
        return type.BaseType is { } parent && parent != typeof(object) && parent != typeof(ValueType) ? [.. Fields(parent), .. own] : own;
    }
}
