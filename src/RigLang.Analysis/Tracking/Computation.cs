namespace RigLang.Analysis.Tracking;

/// <summary>
/// A plain function of facts and other computations, read through the tracking reader. What it returns is thrown away when a read it couldn't do
/// without found nothing, so it needn't look; it must only bear NaN.
/// </summary>
public abstract class Computation
{
    private protected Computation(string name)
    {
        Name = name;
    }

    /// <summary>Stable; what reports and JSON call it.</summary>
    public string Name { get; }

    public override string ToString() => Name;
}

/// <summary>A computation about one sort of subject.</summary>
public class Computation<TSubject, T> : Computation
    where TSubject : ISubject
{
    private readonly Func<Reader, TSubject, T> function;

    public Computation(string name, Func<Reader, TSubject, T> function)
        : base(name)
    {
        this.function = function;
    }

    internal T Run(Reader reader, TSubject subject) => function(reader, subject);
}
