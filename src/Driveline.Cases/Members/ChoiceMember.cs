namespace Driveline.Cases.Members;

/// <summary>One of a list of names: the values of an enum in lower camel case, without NotKnown.</summary>
internal sealed class ChoiceMember<T> : NamesMember<T>
    where T : struct, Enum
{
    public ChoiceMember(string name, string doc)
        : base(name, Choices(), doc)
    {
    }

    private static IEnumerable<KeyValuePair<string, T>> Choices()
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
