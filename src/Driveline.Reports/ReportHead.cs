namespace Driveline.Reports;

/// <summary>
/// The head of a page that is handed over: dealer, customer, machine, date and number. Free texts, printed safely; one that is left out
/// is a line to fill in by hand. The library has no clock: the date is the caller's. Immutable.
/// </summary>
public sealed class ReportHead
{
    private ReportHead(string? dealer, string? customer, string? machine, string? date, string? number)
    {
        Dealer = dealer;
        Customer = customer;
        Machine = machine;
        Date = date;
        Number = number;
    }

    /// <summary>All lines left to be filled in.</summary>
    public static ReportHead Empty { get; } = new(null, null, null, null, null);

    /// <summary>Who hands the page over.</summary>
    public string? Dealer { get; }

    /// <summary>To whom.</summary>
    public string? Customer { get; }

    /// <summary>The machine, its model and number.</summary>
    public string? Machine { get; }

    /// <summary>The date as it shall be printed.</summary>
    public string? Date { get; }

    /// <summary>The number of the quote or the job.</summary>
    public string? Number { get; }

    /// <summary>The same head with a dealer.</summary>
    public ReportHead WithDealer(string? dealer) => new(dealer, Customer, Machine, Date, Number);

    /// <summary>The same head with a customer.</summary>
    public ReportHead WithCustomer(string? customer) => new(Dealer, customer, Machine, Date, Number);

    /// <summary>The same head with a machine.</summary>
    public ReportHead WithMachine(string? machine) => new(Dealer, Customer, machine, Date, Number);

    /// <summary>The same head with a date.</summary>
    public ReportHead WithDate(string? date) => new(Dealer, Customer, Machine, date, Number);

    /// <summary>The same head with a number.</summary>
    public ReportHead WithNumber(string? number) => new(Dealer, Customer, Machine, Date, number);
}
