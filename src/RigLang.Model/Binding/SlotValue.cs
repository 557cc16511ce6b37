using RigLang.Quantities;
using RigLang.Syntax;
using RigLang.Syntax.Tree;

namespace RigLang.Model.Binding;

/// <summary>What a line says in one of its slots, with its place in the line.</summary>
public abstract record SlotValue(TextSpan Span);

/// <summary>A quantity.</summary>
public sealed record MeasureValue(TextSpan Span, Measure Measure) : SlotValue(Span);

/// <summary>A choice or a name.</summary>
public sealed record WordValue(TextSpan Span, string Word) : SlotValue(Span);

/// <summary>Several words that belong together: the axles on a scale.</summary>
public sealed record WordsValue(TextSpan Span, IReadOnlyList<string> Words) : SlotValue(Span);

/// <summary>Text without its quotes.</summary>
public sealed record TextValue(TextSpan Span, string Text) : SlotValue(Span);

/// <summary>A tyre as its sidewall says it.</summary>
public sealed record TyreValue(TextSpan Span, TyreSize Size, TyreService? Service, IReadOnlyList<string> Marks) : SlotValue(Span);

/// <summary>A date, a clock or an offset.</summary>
public sealed record MomentValue(TextSpan Span, Moment Moment) : SlotValue(Span);

/// <summary>A place along the vehicle or trailer.</summary>
/// <param name="Offset">SI metres, positive rearward of the point; zero for <c>at POINT</c>.</param>
public sealed record PositionValue(TextSpan Span, double Offset, Measure? Written, string Point, TextSpan PointSpan) : SlotValue(Span);

/// <summary>A bound, range or value whose kind another word decides; read when that is known.</summary>
public sealed record RawValue(TextSpan Span, ArgumentSyntax Argument) : SlotValue(Span);

/// <summary>Asked and not known, perhaps to be solved for.</summary>
public sealed record QueryValue(TextSpan Span, QuerySyntax Query) : SlotValue(Span);

/// <summary>Known to be absent: <c>none</c> where a quantity could stand.</summary>
public sealed record AbsentValue(TextSpan Span) : SlotValue(Span);

/// <summary>A time of any day.</summary>
public sealed record ClockValue(TextSpan Span, TimeOnly Clock) : SlotValue(Span);

/// <summary>An offset from universal time.</summary>
public sealed record OffsetValue(TextSpan Span, TimeSpan Offset) : SlotValue(Span);
