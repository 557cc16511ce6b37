namespace RigLang.Quantities;

/// <summary>What can be the matter with a quantity.</summary>
public enum QuantityProblemKind
{
    /// <summary>A number cannot be read; <see cref="QuantityProblem.Number"/> says why.</summary>
    Number,

    /// <summary>A unit cannot be taken; <see cref="QuantityProblem.Unit"/> says why.</summary>
    Unit,

    /// <summary>Units that do not make a compound: not smaller from one to the next, or not of one dimension; parts that are not whole.</summary>
    Compound,

    /// <summary>What cannot be added or counted: temperatures on a scale, slopes in degrees, two currencies.</summary>
    Sum,

    /// <summary>A half-width that means nothing here, is negative, or can mean two things.</summary>
    HalfWidth,

    /// <summary>A fraction before another unit than in and ft, 1:n where no slope is wanted.</summary>
    NumberForm,

    /// <summary>A count that is not whole, or is less than nothing.</summary>
    NotACount,

    /// <summary>There is no quantity, or it comes to more than can be reckoned with.</summary>
    NoValue,
}

/// <summary>Which word of a measure a problem is about.</summary>
public enum QuantitySpot
{
    /// <summary>The whole measure.</summary>
    Whole,

    /// <summary>The number before "x".</summary>
    Count,

    /// <summary>A part's number.</summary>
    Number,

    /// <summary>A part's unit.</summary>
    Unit,

    /// <summary>A part, number and unit.</summary>
    Part,
}

/// <summary>Where in a measure: a spot of a part of a term.</summary>
/// <param name="Term">Index in the sum; <see cref="HalfWidth"/> for what stands behind ±.</param>
/// <param name="Part">Index in the term's parts.</param>
/// <param name="Spot">Which word.</param>
public readonly record struct QuantityPlace(int Term, int Part, QuantitySpot Spot)
{
    /// <summary>The term index of what stands behind ±.</summary>
    public const int HalfWidth = -1;

    public bool IsHalfWidth => Term == HalfWidth;
}

/// <summary>A text to put at a place; the title is made by the caller ("write `2.45 kN`").</summary>
/// <param name="Place">May be wider than the problem's: number and unit together.</param>
/// <param name="NewText">What stands there afterwards.</param>
public sealed record QuantityFix(QuantityPlace Place, string NewText);

/// <summary>What is wrong with a measure.</summary>
/// <param name="Kind">What sort of problem.</param>
/// <param name="Place">Where.</param>
/// <param name="IsError">False when the measure was read all the same.</param>
/// <param name="Message">One sentence or two, without the place.</param>
/// <param name="Fixes">Best first; may be empty.</param>
public sealed record QuantityProblem(QuantityProblemKind Kind, QuantityPlace Place, bool IsError, string Message, IReadOnlyList<QuantityFix> Fixes)
{
    /// <summary>Set when <see cref="Kind"/> is Unit.</summary>
    public UnitProblem? Unit { get; init; }

    /// <summary>Set when <see cref="Kind"/> is Number.</summary>
    public NumberProblem? Number { get; init; }
}

/// <summary>What came of reading a measure: no measure if there is an error; a measure may come with lesser problems.</summary>
public sealed record MeasureReading(Measure? Measure, IReadOnlyList<QuantityProblem> Problems)
{
    public bool HasErrors => Problems.Any(problem => problem.IsError);
}
