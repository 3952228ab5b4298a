using System.Text.RegularExpressions;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Findings;

/// <summary>A caution as data: a stable code, by which its text is found, and where it comes from. No renderer may drop one.</summary>
public sealed partial class Caution
{
    private const string Area = "caution.";

    private static Regex OwnCode => field ??= new(@"^[a-z][A-Za-z0-9]{0,39}\.[a-z][A-Za-z0-9]{0,59}\z", RegexOptions.CultureInvariant);

    internal Caution(string code, Basis source)
    {
        Code = Guard.NotBlank(code, "Code of a caution", nameof(code));
        Source = source;
    }

    /// <summary>A caution of the caller's own; its words stand under its code in the texts that the caller gives.</summary>
    /// <param name="code">Stable code, area.name, e.g. "ourShop.torqueToSpecification"; the area "caution" is the library's.</param>
    /// <param name="source">Where it comes from.</param>
    /// <exception cref="ArgumentException">The code is no such code, or of the library's area.</exception>
    public static Caution Of(string code, Basis source)
    {
        Guard.NotBlank(code, "Code of a caution", nameof(code));
        return OwnCode.IsMatch(code) && !code.StartsWith(Area, StringComparison.Ordinal)
            ? new Caution(code, Guard.NotNull(source, nameof(source)))
            : throw new ArgumentException(
                "Code of a caution must be area.name in letters and digits, its area not \"caution\"; got \"" + code + "\".", nameof(code));
    }

    /// <summary>Stable code, e.g. "caution.stopAndKeyOut".</summary>
    public string Code { get; }

    /// <summary>Where it comes from.</summary>
    public Basis Source { get; }

    /// <inheritdoc/>
    public override string ToString() => Code;
}
