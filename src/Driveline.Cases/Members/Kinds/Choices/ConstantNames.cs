using System.Globalization;

namespace Driveline.Cases.Members;

/// <summary>The constants of an enumeration by their names in the file, lower camel case; the first, NotKnown, has none.</summary>
internal static class ConstantNames
{
    // Without generic calls of Enum, each of which a starting program would compile anew for each enumeration.
    public static List<KeyValuePair<string, object>> Of(Type enumeration)
    {
        var named = new List<KeyValuePair<string, object>>();
        foreach (string constant in Enum.GetNames(enumeration))
        {
            object value = Enum.Parse(enumeration, constant);
            if (Convert.ToInt64(value, CultureInfo.InvariantCulture) != 0)
            {
                named.Add(new KeyValuePair<string, object>(char.ToLowerInvariant(constant[0]) + constant.Substring(1), value));
            }
        }

        return named;
    }
}
