namespace Driveline.Reports.Quotes;

/// <summary>What a quote adds to a choice: how many bolts, which row, labour, and until when it holds. Immutable.</summary>
public sealed class QuoteTerms
{
    private QuoteTerms()
    {
    }

    private QuoteTerms(QuoteTerms other)
    {
        Quantity = other.Quantity;
        Labour = other.Labour;
        Sku = other.Sku;
        ValidUntil = other.ValidUntil;
    }

    /// <summary>One bolt, no labour, the best row, a date to fill in.</summary>
    public static QuoteTerms Default { get; } = new();

    /// <summary>Number of bolts.</summary>
    public int Quantity { get; private set; } = 1;

    /// <summary>Labour as one amount in the currency of the bolt; null for none.</summary>
    public decimal? Labour { get; private set; }

    /// <summary>The row to quote by its number in the stock; null for the best that may be offered.</summary>
    public string? Sku { get; private set; }

    /// <summary>Until when the quote holds, as it shall be printed; null for a line to fill in.</summary>
    public string? ValidUntil { get; private set; }

    /// <summary>The same terms for another number of bolts, 1 to 10 000.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside this range.</exception>
    public QuoteTerms WithQuantity(int quantity) => quantity is >= 1 and <= 10000 ? new QuoteTerms(this) { Quantity = quantity }
        : throw new ArgumentOutOfRangeException(nameof(quantity), quantity, "must be from 1 to 10 000");

    /// <summary>The same terms with an amount of labour, 0 or more; null for none.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The amount is negative or above a thousand million.</exception>
    public QuoteTerms WithLabour(decimal? amount) => amount is null or (>= 0 and <= 1000000000) ? new QuoteTerms(this) { Labour = amount }
        : throw new ArgumentOutOfRangeException(nameof(amount), amount, "must be 0 or more");

    /// <summary>The same terms for the row of that number; null for the best that may be offered.</summary>
    public QuoteTerms WithSku(string? sku) => new(this) { Sku = sku };

    /// <summary>The same terms with another date; null for a line to fill in.</summary>
    public QuoteTerms WithValidUntil(string? date) => new(this) { ValidUntil = date };
}
