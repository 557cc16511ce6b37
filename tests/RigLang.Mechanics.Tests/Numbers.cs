namespace RigLang.Mechanics.Tests;

internal static class Numbers
{
    /// <summary>Maps any whole number to a range, so that a random test case is always a sensible one.</summary>
    public static double Between(int any, double low, double high) => low + ((high - low) * (((uint)any * 2654435761u % 100_003u) / 100_002.0));
}
