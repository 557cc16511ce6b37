using System.Collections.Immutable;
using RigLang.Analysis.Results;
using System.Runtime.CompilerServices;
using RigLang.Analysis.Solving;
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
    private StrongBox<bool>? asks;
    private readonly Lazy<ImmutableArray<ISubject>> subjects;
    private readonly Lazy<Dictionary<ISubject, int>> places;

    /// <param name="original">The study that this one is a variation of; null for one of the files as they are.</param>
    /// <param name="variation">What is different from the original.</param>
    private protected Study(Study? original = null, Variation? variation = null)
    {
        Original = original;
        Variation = variation?.Over(original?.Variation);
        subjects = new(() => [.. ListSubjects()]);
        places = new(() => subjects.Value.Select((subject, place) => (subject, place)).ToDictionary(pair => pair.subject, pair => pair.place, ReferenceEqualityComparer.Instance as IEqualityComparer<ISubject>));
    }

    /// <summary>What the rig's practice assumes, by fact.</summary>
    public abstract IReadOnlyDictionary<FactDeclaration, Assumption> Assumptions { get; }

    /// <summary>The same with other values for some facts. Only what rests on them is carried out again; all else is shared with this study.</summary>
    public abstract Study With(Variation variation);

    /// <summary>What the study can be asked about: itself, and its axles, legs, stops, passes.</summary>
    public ImmutableArray<ISubject> Subjects => subjects.Value;

    /// <summary>The studies inside this one: a trip's rig, the rigs of a weighing's passes.</summary>
    public virtual IEnumerable<Study> Inner => [];

    /// <summary>How many computations were carried out in this study itself; what it shares with the one that it varies isn't counted.</summary>
    public int CarriedOut { get; private set; }

    /// <summary>What came of the questions of the files, in a study that was solved; their values hold in it.</summary>
    public ImmutableArray<Answer> Answers { get; internal set; } = [];

    /// <summary>Answers to the questions that stand in a declaration itself; of a rig, those of its parts too, which each rig answers for itself.</summary>
    public IEnumerable<Answer> AnswersOf(Block declaration) => this is Studies.RigStudy ? Answers : Answers.Where(answer => ReferenceEquals(answer.Unknown.Root, declaration));

    /// <summary>Whether a line of its files asks for a value with a goal.</summary>
    internal bool Asks => (asks ??= new StrongBox<bool>(Outward.Of(this).Any(place => Unknown.In(place.Block).Any()))).Value;

    internal Study? Original { get; }

    /// <summary>The values that hold here in place of the files'; null for a study of the files as they are.</summary>
    internal Variation? Variation { get; }

    /// <summary>What a subject of the study that this one varies, or of a study inside that, is here; null when it belongs to another study altogether.</summary>
    public TSubject? Here<TSubject>(TSubject subject)
        where TSubject : class, ISubject
    {
        for (var study = this; study is not null; study = study.Original)
        {
            if (ReferenceEquals(study, subject.Study))
            {
                return (TSubject)Subjects[study.places.Value[subject]];
            }
        }

        return Inner.Select(inner => inner.Here(subject)).FirstOrDefault(found => found is not null);
    }

    /// <summary>The line of a block with the values that hold here: where it asks for one with a question mark, what was found.</summary>
    public Fact? Line(Block block, FactDeclaration fact) => block.Find(fact) is { } line ? Variation?.Replaced(line) ?? line : null;

    /// <summary>One look at a fact, which nothing rests on.</summary>
    internal T Probe<T>(Func<Reader, T> look) => look(new Reader(this));

    /// <summary>In an order that rests on the files alone, so that those of a variation are paired with those of its original.</summary>
    private protected abstract IEnumerable<ISubject> ListSubjects();

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

            if (Original is { } original)
            {
                var before = original.Compute(computation, (TSubject)original.Subjects[places.Value[subject]]);
                if (!Variation!.Reaches(before))
                {
                    nodes[(computation, subject)] = before;
                    return before;
                }
            }

            nodes[(computation, subject)] = null;
            try
            {
                CarriedOut++;
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

/// <summary>Short ways to vary a study.</summary>
public static class StudyExtensions
{
    /// <summary>The study with another value (SI) for one fact; of a place, metres rearward of its point.</summary>
    public static TStudy With<TStudy>(this TStudy study, FactRef fact, double value)
        where TStudy : Study => (TStudy)study.With(Variation.Of(fact, value));

    /// <summary>The study with other values (SI) for several facts.</summary>
    public static TStudy With<TStudy>(this TStudy study, IEnumerable<KeyValuePair<FactRef, double>> values)
        where TStudy : Study => (TStudy)study.With(Variation.Of(values));
}

/// <summary>Results in a varied study.</summary>
internal static class VariedResults
{
    /// <summary>What a result of a subject of the original is here; NaN where it can't be computed.</summary>
    public static double ValueHere(this Study varied, IResult result, ISubject subject) =>
        varied.Here(subject) is { } here && result.Compute(here) is { IsComputed: true } node ? node.Value : double.NaN;
}

/// <summary>A figure that a practice assumes, and the line that says so.</summary>
public sealed record Assumption(double Value, double HalfWidth, Fact Line);
