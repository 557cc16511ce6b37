namespace RigLang.Quantities;

/// <summary>How a value stands to what is usual.</summary>
public enum Plausibility
{
    Plausible,
    Low,
    High,
}

/// <summary>Magnitudes that an ordinary rig can have, in SI, ends included. Outside it a value is asked about, not refused.</summary>
public readonly record struct PlausibleRange(double LowSi, double HighSi)
{
    public Plausibility Judge(double si) =>
        Limits.FallsBelow(si, LowSi) ? Plausibility.Low
        : Limits.Exceeds(si, HighSi) ? Plausibility.High
        : Plausibility.Plausible;
}
