namespace Driveline.Cases.Members;

/// <summary>A row whose fact is an object of the core: a thread, a band, a list.</summary>
internal abstract class ReferenceMember<T> : Member
    where T : class
{
    protected ReferenceMember(string name, string doc)
        : base(name, doc)
    {
    }

    /// <summary>The fact of a value that <see cref="Member.Read"/> gave.</summary>
    public virtual T FactOf(object value) => (T)value;
}
