namespace RigLang.Analysis.Results.Planning;

/// <summary>What keeps a rig from going faster on a leg.</summary>
public enum CapReason
{
    /// <summary>What the driver likes: <c>comfort-speed</c>, else the <c>speed</c> of the leg or the rig.</summary>
    Comfort,

    /// <summary>The leg's <c>speed-limit</c>.</summary>
    Limit,

    /// <summary>The law that the rig's <c>rules</c> name.</summary>
    Law,

    /// <summary>The trailer's plate.</summary>
    Plate,

    /// <summary>A tyre's speed symbol.</summary>
    Tyre,

    /// <summary>A swing dies away too slowly above.</summary>
    Steady,
}

/// <summary>A speed that isn't exceeded.</summary>
/// <param name="Speed">m/s.</param>
/// <param name="Reason">Why.</param>
/// <param name="Words">The reason in words, to stand behind "held by".</param>
public sealed record SpeedCap(double Speed, CapReason Reason, string Words);
