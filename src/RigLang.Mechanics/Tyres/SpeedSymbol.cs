namespace RigLang.Mechanics;

/// <summary>Speed symbols of tyres in the order of their speeds (H comes after U).</summary>
public enum SpeedSymbol
{
    A1, A2, A3, A4, A5, A6, A7, A8, B, C, D, E, F, G, J, K, L, M, N, P, Q, R, S, T, U, H, V, W, Y,
}

/// <summary>What speed symbols mean. Source: the table of ISO 4000-1, ETRTO and UN R30.</summary>
public static class SpeedSymbols
{
    private static ReadOnlySpan<short> KilometresPerHour =>
        [5, 10, 15, 20, 25, 30, 35, 40, 50, 60, 65, 70, 80, 90, 100, 110, 120, 130, 140, 150, 160, 170, 180, 190, 200, 210, 240, 270, 300];

    /// <summary>Highest speed, m/s; NaN for a value that is no symbol.</summary>
    public static double Speed(SpeedSymbol symbol) =>
        (int)symbol >= 0 && (int)symbol < KilometresPerHour.Length ? KilometresPerHour[(int)symbol] / 3.6 : double.NaN;
}
