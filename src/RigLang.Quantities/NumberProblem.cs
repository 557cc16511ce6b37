namespace RigLang.Quantities;

/// <summary>What can be the matter with a number.</summary>
public enum NumberProblemKind
{
    /// <summary>There is no text.</summary>
    Missing,

    /// <summary>".5": read, with the fix "0.5".</summary>
    LeadingZero,

    /// <summary>A comma: a decimal point or a grouping.</summary>
    Comma,

    /// <summary>"1e3".</summary>
    Exponent,

    /// <summary>A zero below the stroke, or behind "1:".</summary>
    DividedByZero,

    /// <summary>"2-17/16": the fraction behind whole inches is more than one.</summary>
    ImproperFraction,

    /// <summary>More than can be reckoned with.</summary>
    TooLarge,

    /// <summary>Anything else that is not a number.</summary>
    Malformed,
}

/// <summary>What is wrong with a number.</summary>
/// <param name="Kind">What sort of problem.</param>
/// <param name="IsError">False when the number was read all the same.</param>
/// <param name="Message">One sentence or two, without the place.</param>
/// <param name="Suggestions">Numbers to write in its place, best first; may be empty.</param>
public sealed record NumberProblem(NumberProblemKind Kind, bool IsError, string Message, IReadOnlyList<string> Suggestions);
