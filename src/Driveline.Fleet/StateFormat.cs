namespace Driveline.Fleet;

/// <summary>The form in which a silo stores the state of a driveline; each silo reads all up to its newest.</summary>
public enum StateFormat
{
    /// <summary>The monitor in the form of 8 bytes a value: 5 to 9 KB, at most 20 KB.</summary>
    Wide = 1,

    /// <summary>The monitor packed: at most 4 KB.</summary>
    Packed = 2,
}
