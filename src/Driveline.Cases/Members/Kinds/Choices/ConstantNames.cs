namespace Driveline.Cases.Members;

/// <summary>The constants of an enumeration by their names in the file, lower camel case; the first, NotKnown, has none.</summary>
internal static class ConstantNames
{
    public static IEnumerable<KeyValuePair<string, T>> Of<T>()
        where T : struct, Enum
    {
#if NET
        string[] constants = Enum.GetNames<T>();
#else
        string[] constants = Enum.GetNames(typeof(T));
#endif
        foreach (string constant in constants)
        {
            if (Enum.TryParse(constant, out T value) && !value.Equals(default(T)))
            {
                yield return new KeyValuePair<string, T>(char.ToLowerInvariant(constant[0]) + constant.Substring(1), value);
            }
        }
    }
}
