namespace Driveline.Reports.Pictures;

/// <summary>The width of a picture and the sizes that follow from it: on a phone the words stand above what they name.</summary>
internal sealed class PictureFrame
{
    /// <summary>Below this width, in pixels, the narrow layout.</summary>
    public const double NarrowBelow = 640;

    /// <summary>In a page on a screen or on paper; the page says the headline.</summary>
    public static readonly PictureFrame Wide = new(1000, hasHeadline: false);

    /// <summary>In a page on a phone; the page says the headline.</summary>
    public static readonly PictureFrame Narrow = new(360, hasHeadline: false);

    private PictureFrame(double width, bool hasHeadline)
    {
        Width = width;
        IsNarrow = width < NarrowBelow;
        HasHeadline = hasHeadline;
    }

    /// <summary>False where a page has said it just before.</summary>
    public bool HasHeadline { get; }

    public double Width { get; }

    public bool IsNarrow { get; }

    public double Margin => IsNarrow ? 12 : 24;

    /// <summary>Room for words from margin to margin.</summary>
    public double Inner => Width - (2 * Margin);

    public double Headline => IsNarrow ? 17 : 24;

    public double Name => IsNarrow ? 14 : 16;

    public double Detail => IsNarrow ? 13 : 14;

    /// <summary>Numbers at an axis, the key.</summary>
    public double Small => IsNarrow ? 12.5 : 13;

    /// <summary>The frame of a width that a caller asked for.</summary>
    public static PictureFrame Of(double width) => new(width, hasHeadline: true);
}
