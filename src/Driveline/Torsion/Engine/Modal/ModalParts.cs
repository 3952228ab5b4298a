namespace Driveline.Torsion;

/// <summary>What a modal system is made of, as its builder leaves it.</summary>
internal sealed class ModalParts
{
    public ModalState[] States { get; set; } = [];

    public double[] Re { get; set; } = [];

    public double[] Im { get; set; } = [];

    public double[] Back { get; set; } = [];

    public double[] Forth { get; set; } = [];

    public double[] Rows { get; set; } = [];

    public double[] RowSizes { get; set; } = [];

    public long Work { get; set; }
}
