namespace Driveline.Provenance;

/// <summary>One line of a calculation sheet: what is computed, by which formula, in which unit.</summary>
/// <remarks>Declared once beside the kernel that computes it; a kernel reports it to its recorder with a value.</remarks>
public sealed class CalculationStep
{
    /// <summary>Declares a step.</summary>
    /// <param name="code">Stable code, e.g. "breakTorque".</param>
    /// <param name="symbol">Symbol as printed, e.g. "T".</param>
    /// <param name="formula">Formula in those symbols, e.g. "n · A · τ · r".</param>
    /// <param name="unit">SI unit of the value, "1" for a ratio.</param>
    /// <param name="source">Where the formula comes from.</param>
    public CalculationStep(string code, string symbol, string formula, string unit, string source)
    {
        Code = code ?? throw new ArgumentNullException(nameof(code));
        Symbol = symbol ?? throw new ArgumentNullException(nameof(symbol));
        Formula = formula ?? throw new ArgumentNullException(nameof(formula));
        Unit = unit ?? throw new ArgumentNullException(nameof(unit));
        Source = source ?? throw new ArgumentNullException(nameof(source));
    }

    /// <summary>True for a number that the sum begins with: its formula says in words what it is.</summary>
    public bool IsInput { get; private set; }

    /// <summary>Stable code.</summary>
    public string Code { get; }

    /// <summary>Symbol as printed.</summary>
    public string Symbol { get; }

    /// <summary>Formula in the symbols of the sheet.</summary>
    public string Formula { get; }

    /// <summary>SI unit of the value.</summary>
    public string Unit { get; }

    /// <summary>Where the formula comes from.</summary>
    public string Source { get; }

    /// <summary>Declares a number that a sum begins with.</summary>
    internal static CalculationStep Input(string code, string symbol, string words, string unit, string source) =>
        new(code, symbol, words, unit, source) { IsInput = true };
}
