using RigLang.Model.Binding;

namespace RigLang.Analysis.Tracking;

/// <summary>
/// Some facts with other values. <c>study.With(variation)</c> gives the study in which they hold; it carries out again only the computations whose noted reads
/// come to one of these facts, and shares all others with the study that it was made from. Safe to use from several threads.
/// </summary>
public sealed class Variation
{
    private readonly Dictionary<FactRef, Change> changes = [];
    private readonly Dictionary<Fact, Fact> lines = new(ReferenceEqualityComparer.Instance as IEqualityComparer<Fact>);
    private readonly ReadOrigin origin;
    private readonly Reach reach;

    /// <param name="changes">SI; of a place, metres rearward of its point.</param>
    /// <param name="origin">How a read of them is marked: <see cref="ReadOrigin.Varied"/> or <see cref="ReadOrigin.Solved"/>.</param>
    /// <param name="under">What already holds and still does.</param>
    /// <param name="reach">What these facts come to, where that was asked before.</param>
    internal Variation(IEnumerable<KeyValuePair<FactRef, double>> changes, ReadOrigin origin, Variation? under, Reach? reach = null)
    {
        this.origin = origin;
        Under = under;
        foreach (var (fact, value) in changes)
        {
            this.changes[fact] = new Change(value, origin);
            if (fact is { Line: { } line, IsAssumption: false })
            {
                lines[line] = ReplacedLines.With(lines.GetValueOrDefault(line) ?? under?.Replaced(line) ?? line, fact, value);
            }
        }

        this.reach = reach ?? new Reach(this.changes.Keys);
    }

    /// <summary>One fact with another value (SI).</summary>
    public static Variation Of(FactRef fact, double value) => Of([new(fact, value)]);

    public static Variation Of(IEnumerable<KeyValuePair<FactRef, double>> changes) => new(changes, ReadOrigin.Varied, null);

    /// <summary>Answers to questions: no line says these, they were found.</summary>
    internal static Variation Solved(IEnumerable<KeyValuePair<FactRef, double>> answers) => new(answers, ReadOrigin.Solved, null);

    /// <summary>The same facts with other values, as a search tries them: what they come to is found out once for all.</summary>
    /// <param name="values">SI; one for each of the facts.</param>
    public Variation At(IEnumerable<KeyValuePair<FactRef, double>> values) => new(values, origin, Under, reach);

    /// <summary>The only fact with another value (SI).</summary>
    public Variation At(double value) => At([new(changes.Keys.Single(), value)]);

    /// <summary>The facts with their values here.</summary>
    public IEnumerable<KeyValuePair<FactRef, double>> Facts => changes.Select(pair => new KeyValuePair<FactRef, double>(pair.Key, pair.Value.Value));

    /// <summary>What held in the study that it was laid over.</summary>
    internal Variation? Under { get; }

    /// <summary>The same changes laid over what another study already holds.</summary>
    internal Variation Over(Variation? under) => under is null && Under is null
        ? this
        : new Variation(Facts, origin, under, reach);

    /// <summary>The value of a fact that isn't what its line says, here or in what it is laid over.</summary>
    internal Change? Find(FactRef fact) => changes.TryGetValue(fact, out var change) ? change : Under?.Find(fact);

    /// <summary>The line as it would be with its changed values; the line itself where nothing of it is changed.</summary>
    internal Fact Replaced(Fact line) => lines.TryGetValue(line, out var replaced) ? replaced : Under?.Replaced(line) ?? line;

    /// <summary>Whether a computation's reads come to a fact that is changed here.</summary>
    internal bool Reaches(Node node) => reach.Holds(node);

    /// <summary>A value put in place of what the files say.</summary>
    /// <param name="Value">SI.</param>
    internal readonly record struct Change(double Value, ReadOrigin Origin);
}
