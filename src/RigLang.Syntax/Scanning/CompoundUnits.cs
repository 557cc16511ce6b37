namespace RigLang.Syntax.Scanning;

/// <summary>
/// Which unit may go on with which: <c>33 ft 4 in</c> is one length, <c>10 s 30 m/s</c> two quantities. The list is part of the grammar
/// (it decides where an argument ends), so it stands here and not in the unit table.
/// </summary>
internal static class CompoundUnits
{
    public static bool GoesOn(string larger, string smaller) => (larger, smaller) switch
    {
        ("ft", "in") => true,
        ("d", "h" or "min") => true,
        ("h", "min" or "s") => true,
        ("min", "s") => true,
        ("lb", "oz") => true,
        _ => false,
    };
}
