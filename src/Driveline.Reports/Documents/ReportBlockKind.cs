namespace Driveline.Reports.Documents;

/// <summary>What a block of a report is.</summary>
internal enum ReportBlockKind
{
    /// <summary>A paragraph.</summary>
    Paragraph = 0,

    /// <summary>The title of the report.</summary>
    Title,

    /// <summary>The one sentence that matters most.</summary>
    Lead,

    /// <summary>The heading of a section.</summary>
    Heading,

    /// <summary>Items without an order.</summary>
    Bullets,

    /// <summary>Items in order.</summary>
    Numbered,

    /// <summary>Rows of cells; the first row holds the column heads.</summary>
    Table,

    /// <summary>A picture.</summary>
    Picture,

    /// <summary>Items in order, each to be ticked when it is done.</summary>
    Steps,

    /// <summary>Lines to sign on.</summary>
    Sign,

    /// <summary>One step of a worked sum.</summary>
    Step,
}
