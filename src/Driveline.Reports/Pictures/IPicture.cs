namespace Driveline.Reports.Pictures;

/// <summary>Something that draws itself in a frame and says what it shows.</summary>
internal interface IPicture
{
    /// <summary>The sentence that the picture answers its reader with.</summary>
    string Title { get; }

    /// <summary>What is drawn, for those who cannot see it.</summary>
    string Description { get; }

    /// <summary>Its width in the units of the picture.</summary>
    double Width { get; }

    /// <summary>Its height in the units of the picture.</summary>
    double Height { get; }

    /// <summary>Draws it.</summary>
    void Draw(SvgCanvas canvas);
}
