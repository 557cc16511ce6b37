namespace RigLang.Cli;

/// <summary>What the program ends with. Stable: scripts rest on it.</summary>
public static class ExitCodes
{
    /// <summary>Nothing wrong, or notes and warnings only.</summary>
    public const int Fine = 0;

    /// <summary>Warnings with <c>--strict</c>; files that aren't formatted with <c>format --check</c>.</summary>
    public const int Wanting = 1;

    /// <summary>Errors in the files.</summary>
    public const int Errors = 2;

    /// <summary>The question couldn't be answered, or not in full: no such file, nothing of that name, a fault of the program.</summary>
    public const int CouldNotRun = 3;
}
