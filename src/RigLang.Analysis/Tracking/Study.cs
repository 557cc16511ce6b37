using RigLang.Model.Binding;
using RigLang.Model.Declaring;

namespace RigLang.Analysis.Tracking;

/// <summary>
/// The computations about one rig or trip with the parts, loads and practice that it has in one state of the files. Each is carried out once, when it is first
/// asked for. Safe to use from several threads.
/// </summary>
public abstract class Study
{
    /// <summary>How the path of a block begins that stands for a part nobody named, or that can't be found; the rest says what is wanted.</summary>
    internal const string NoSuchPart = "#a ";

    private readonly Dictionary<(Computation, ISubject), Node?> nodes = [];
    private readonly Lock gate = new();

    /// <summary>What the rig's practice assumes, by fact.</summary>
    public abstract IReadOnlyDictionary<FactDeclaration, Assumption> Assumptions { get; }

    /// <summary>Values to use in place of what is written, for questions of the kind "what if".</summary>
    public virtual IReadOnlyDictionary<(Block, FactDeclaration), double> Overrides { get; } = new Dictionary<(Block, FactDeclaration), double>();

    /// <summary>Carries the computation out, or gives back what came of it before.</summary>
    public Node<T> Compute<TSubject, T>(Computation<TSubject, T> computation, TSubject subject)
        where TSubject : ISubject
    {
        lock (gate)
        {
            if (nodes.TryGetValue((computation, subject), out var known))
            {
                // A null stands for one that is being computed: it asked for itself, which a declared result never does.
                return (Node<T>?)known ?? throw new InvalidOperationException($"The computation {computation.Name} reads itself.");
            }

            nodes[(computation, subject)] = null;
            try
            {
                var reader = new Reader(this);
                var node = reader.Finish(computation, subject, computation.Run(reader, subject));
                nodes[(computation, subject)] = node;
                return node;
            }
            catch
            {
                // Not left as being computed: who asks next is told what failed, and not that it reads itself.
                nodes.Remove((computation, subject));
                throw;
            }
        }
    }
}

/// <summary>A figure that a practice assumes, and the line that says so.</summary>
public sealed record Assumption(double Value, double HalfWidth, Fact Line);
