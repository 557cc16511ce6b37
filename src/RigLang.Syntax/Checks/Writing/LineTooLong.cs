namespace RigLang.Syntax.Checks.Writing;

public static class LineTooLong
{
    /// <summary>The longest honest line has some two dozen atoms; what lies behind this many is kept as one stray piece.</summary>
    internal const int MostAtoms = 200;

    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL105",
        Slug = "line-too-long",
        Severity = Severity.Error,
        Summary = "A line has more words than any fact can have; the rest of it isn't read.",
        Why = "One line holds one fact. A line of hundreds of words is another kind of file, or has lost its line breaks.",
        Bad = "load autumn\n    on vehicle\n        item stores " + Repeated + "1 kg at axle\n",
        Good = "load autumn\n    on vehicle\n        item stores 1 kg + 1 kg at axle\n",
        Fix = "Write one fact a line; split a long sum over several items.",
        CanBeAllowed = false,
    };

    private const string Ten = "1 kg + 1 kg + 1 kg + 1 kg + 1 kg + 1 kg + 1 kg + 1 kg + 1 kg + 1 kg + ";
    private const string Repeated = Ten + Ten + Ten + Ten + Ten + Ten + Ten;

    internal static LineFinding Of(TextSpan rest) => new(Check, rest, $"This line has more than {MostAtoms} words and signs; from here on it isn't read. Write one fact a line.");
}
