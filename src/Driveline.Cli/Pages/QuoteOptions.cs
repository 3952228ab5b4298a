using System.CommandLine;
using System.Globalization;
using Driveline.Choosing;
using Driveline.Reports.Quotes;

namespace Driveline.Cli.Pages;

/// <summary>The options of choose that make a quote: a stock file, how many, labour, until when.</summary>
internal sealed class QuoteOptions
{
    private Option<string?> Stock { get; } = new("--stock")
    {
        Description = "Stock file with the columns sku,designation,grade,length,coating,price,currency: the report becomes a quote.",
        HelpName = "FILE",
    };

    private Option<string?> Sku { get; } = new("--sku") { Description = "The row to quote; without it the best.", HelpName = "SKU" };

    private Option<int> Quantity { get; } = new("--quantity")
    {
        Description = "Number of bolts.",
        DefaultValueFactory = _ => 1,
        HelpName = "N",
    };

    private Option<string?> Labour { get; } = new("--labour")
    {
        Description = "Labour as one amount, in the currency of the bolt.",
        HelpName = "AMOUNT",
    };

    private Option<string?> ValidUntil { get; } = new("--valid-until")
    {
        Description = "Until when the quote holds, as it shall be printed.",
        HelpName = "TEXT",
    };

    public void AddTo(Command command)
    {
        command.Add(Stock);
        command.Add(Sku);
        command.Add(Quantity);
        command.Add(Labour);
        command.Add(ValidUntil);
    }

    /// <summary>The stock of the file named; null when none is.</summary>
    /// <exception cref="BadInputException">It cannot be read.</exception>
    public StockFile? StockOf(ParseResult parsed, Terminal terminal)
    {
        if (parsed.GetValue(Stock) is not { } path)
        {
            return null;
        }

        string text = InputFile.ReadLines(path, "a stock file", terminal, reader => reader.ReadToEnd());
        return StockFile.TryParse(text, out StockFile? file, out string? problem) ? file
            : throw new BadInputException(path + ": " + problem);
    }

    /// <exception cref="BadInputException">A number is out of its range.</exception>
    public QuoteTerms Of(ParseResult parsed)
    {
        int quantity = parsed.GetValue(Quantity);
        if (quantity is < 1 or > 10000)
        {
            throw new BadInputException("--quantity must be from 1 to 10000.");
        }

        decimal? labour = null;
        if (parsed.GetValue(Labour) is { } text)
        {
            labour = decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal amount)
                && amount <= 1000000000 ? amount
                : throw new BadInputException("--labour '" + text + "' is not an amount: a number of 0 or more with a decimal point.");
        }

        return QuoteTerms.Default.WithQuantity(quantity).WithLabour(labour).WithSku(parsed.GetValue(Sku))
            .WithValidUntil(parsed.GetValue(ValidUntil));
    }
}
