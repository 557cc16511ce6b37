using RigLang.Analysis.Tracking;
using RigLang.Quantities;

namespace RigLang.Analysis.Results;

/// <summary>A number that the tool shows, declared once: hover, tables, JSON, expectations, limits and the reference pages are made from it.</summary>
public interface IResult
{
    /// <summary>Stable; what <c>expect</c> and <c>limit</c> name. Never spelt like a fact's keyword.</summary>
    string Name { get; }

    QuantityKind Kind { get; }

    /// <summary>For a table's first column: "Front axle load".</summary>
    string Title { get; }

    /// <summary>One line: what it says.</summary>
    string Meaning { get; }

    /// <summary>As text, with the facts' keywords and other results' names.</summary>
    string Formula { get; }

    /// <summary>Where the model comes from.</summary>
    string Source { get; }

    /// <summary>What sort of thing it is a result of.</summary>
    ResultScope Scope { get; }

    /// <summary>Whether the reason for which no number comes out is an answer by itself: "none up to 200 km/h".</summary>
    bool NoneIsAnswer { get; }

    /// <summary>Carries it out; null when the subject is of another sort.</summary>
    Node<double>? Compute(ISubject subject);

    /// <summary>A value of this result as it is shown: mostly in the kind's own unit, a moment as date and time, money with its currency.</summary>
    /// <param name="subject">What it is a result of.</param>
    /// <param name="value">SI.</param>
    /// <param name="system">For the unit.</param>
    string Write(ISubject subject, double value, DisplaySystem system) => QuantityWriter.Write(value, Kind, system);
}

/// <summary>What sort of thing a result belongs to.</summary>
public enum ResultScope
{
    Rig,
    Axle,
    Trip,
    Leg,
    Stop,
    Weighing,
    Reading,
    Run,
    RunSet,
}

/// <summary>A result of one sort of subject.</summary>
public sealed class ResultDeclaration<TSubject> : Computation<TSubject, double>, IResult
    where TSubject : class, ISubject
{
    internal ResultDeclaration(
        ResultScope scope, string name, QuantityKind kind, string title, string meaning, string formula, string source, Func<Reader, TSubject, double> function)
        : base(name, function)
    {
        Scope = scope;
        Kind = kind;
        Title = title;
        Meaning = meaning;
        Formula = formula;
        Source = source;
    }

    public ResultScope Scope { get; }

    public QuantityKind Kind { get; }

    public string Title { get; }

    public string Meaning { get; }

    public string Formula { get; }

    public string Source { get; }

    public bool NoneIsAnswer { get; init; }

    /// <summary>Set for what isn't shown as a plain quantity.</summary>
    internal Func<TSubject, double, DisplaySystem, string>? Writer { get; init; }

    public Node<double>? Compute(ISubject subject) => subject is TSubject mine ? mine.Study.Compute(this, mine) : null;

    public string Write(ISubject subject, double value, DisplaySystem system) =>
        Writer is { } write && subject is TSubject mine ? write(mine, value, system) : QuantityWriter.Write(value, Kind, system);
}
