namespace Driveline.Wording;

/// <summary>A language in which texts are held.</summary>
public enum Language
{
    /// <summary>English.</summary>
    English = 0,

    /// <summary>Spanish, with a decimal comma.</summary>
    Spanish = 1,
}
