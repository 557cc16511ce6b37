namespace RigLang.Mechanics;

/// <summary>
/// The one way this library refuses: a number outside a model's domain becomes NaN where it enters, NaN runs through the
/// arithmetic, and an overflow becomes NaN where it leaves. Nothing throws and no infinity gets out.
/// </summary>
internal static class Domain
{
    public static double Finite(double value) => double.IsFinite(value) ? value : double.NaN;

    public static double Positive(double value) => value > 0 && double.IsFinite(value) ? value : double.NaN;

    public static double NotNegative(double value) => value >= 0 && double.IsFinite(value) ? value : double.NaN;

    public static double Within(double value, double low, double high) => value >= low && value <= high ? value : double.NaN;
}
