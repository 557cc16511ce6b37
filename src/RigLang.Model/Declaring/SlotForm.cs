using RigLang.Syntax;
using System.Collections.Immutable;
using RigLang.Quantities;

namespace RigLang.Model.Declaring;

/// <summary>What may stand in one place of a line.</summary>
public abstract record SlotForm
{
    /// <summary>How the form is named in messages and on reference pages: "a length", "yes or no".</summary>
    public abstract string Words { get; }
}

/// <summary>A quantity of one of these kinds, the likelier first.</summary>
public sealed record QuantityForm(ImmutableArray<QuantityKind> Kinds) : SlotForm
{
    public override string Words => string.Join(" or ", Kinds.Select(kind => Phrase.WithArticle(kind.Name)));
}

/// <summary>One of a few words.</summary>
public sealed record ChoiceForm(ImmutableArray<string> Choices) : SlotForm
{
    public override string Words => Choices.Length == 1 ? $"`{Choices[0]}`" : string.Join(", ", Choices.SkipLast(1)) + " or " + Choices[^1];
}

/// <summary>A name that this line makes.</summary>
public sealed record NameForm : SlotForm
{
    public override string Words => "a name";
}

/// <summary>The name of a declaration.</summary>
public sealed record ReferenceForm(DeclarationKind Kind) : SlotForm
{
    public override string Words => $"the name of a {Kind.Keyword()}";
}

/// <summary>A name made elsewhere in the same scope: an axle, a tank, a place of the trip.</summary>
public sealed record LocalNameForm(LocalNames Of) : SlotForm
{
    public override string Words => Of switch
    {
        LocalNames.Axle => "an axle's name",
        LocalNames.Tank => "a tank's name",
        LocalNames.Leg => "the leg's name",
        LocalNames.ItemOrTank => "an item's or a tank's name",
        _ => "a name",
    };
}

/// <summary>Whose names a <see cref="LocalNameForm"/> takes.</summary>
public enum LocalNames
{
    Axle,
    Tank,
    Leg,
    ItemOrTank,
}

/// <summary>Text in double quotes.</summary>
public sealed record TextForm : SlotForm
{
    public override string Words => "text in double quotes";
}

/// <summary>A file's path in double quotes.</summary>
public sealed record PathForm(string Extension) : SlotForm
{
    public override string Words => $"a {Extension} file's path in double quotes";
}

/// <summary>A tyre's size and service description.</summary>
public sealed record TyreForm : SlotForm
{
    public override string Words => "a tyre's size and service description";
}

/// <summary>A date, a moment, a clock time, an offset or a year and week.</summary>
public sealed record MomentForm(MomentShape Shape) : SlotForm
{
    public override string Words => Shape switch
    {
        MomentShape.Date => "a date (2026-09-05)",
        MomentShape.DateAndClock => "a date and a time (2026-10-03 08:15, with +10:00 behind it if clocks change)",
        MomentShape.Clock => "a clock time (07:30)",
        MomentShape.Offset => "an offset from universal time (+09:30)",
        _ => "a year and week (2024-W18)",
    };
}

/// <summary>Which parts of a moment are wanted.</summary>
public enum MomentShape
{
    Date,
    DateAndClock,
    Clock,
    Offset,
    YearWeek,
}

/// <summary>A place along the vehicle or trailer: <c>at 0.9 m behind axle</c>, <c>at axle</c>.</summary>
public sealed record PositionForm : SlotForm
{
    public override string Words => "a place, such as `at 0.9 m behind axle`";
}

/// <summary>The name of a result.</summary>
public sealed record ResultNameForm : SlotForm
{
    public override string Words => "a result's name";
}

/// <summary>The keyword of a fact, with its key where it has one.</summary>
public sealed record KeywordForm : SlotForm
{
    public override string Words => "a keyword, and its key if it has one";
}

/// <summary>A check's slug or code.</summary>
public sealed record CheckNameForm : SlotForm
{
    public override string Words => "a check's slug or code";
}

/// <summary>A bound or range whose kind of quantity another word of the line decides.</summary>
public sealed record BoundForm : SlotForm
{
    public override string Words => "a bound (`< 6000 lb`), a range (`7 % .. 10 %`) or a value (`= 1180 kg ± 15 kg`)";
}

/// <summary>A value whose kind of quantity another word of the line decides.</summary>
public sealed record AnyValueForm : SlotForm
{
    public override string Words => "a value";
}

/// <summary>A quantity, or the word <c>none</c>: known to be absent.</summary>
public sealed record QuantityOrNoneForm(QuantityKind Kind) : SlotForm
{
    public override string Words => $"{Phrase.WithArticle(Kind.Name)} or `none`";
}

/// <summary>What stood on a scale: axles by name, with <c>left</c> or <c>right</c> behind one; or <c>trailer</c>; or <c>tongue</c>.</summary>
public sealed record ScaledAxlesForm : SlotForm
{
    public override string Words => "axles (`front`, `front rear`, `front left`), `trailer` or `tongue`";
}
