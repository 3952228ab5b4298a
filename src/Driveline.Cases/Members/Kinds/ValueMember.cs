namespace Driveline.Cases.Members;

/// <summary>A row whose fact is a value: a quantity, a number, a choice, a date.</summary>
internal abstract class ValueMember<T> : Member
    where T : struct
{
    protected ValueMember(string name, string doc)
        : base(name, doc)
    {
    }

    /// <summary>The fact of a value that <see cref="Member.Read"/> gave.</summary>
    public virtual T FactOf(object value) => (T)value;
}
