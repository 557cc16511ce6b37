using System.Globalization;

namespace RigLang.Analysis.Doubts;

/// <summary>A chance as people say it.</summary>
public static class ChanceWords
{
    /// <summary>What is less likely than this (one time out of 20) isn't worth a finding: it is what ± leaves over.</summary>
    public const double WorthSaying = 0.05;

    /// <summary>"28 %", "less than 1 %", "more than 99 %".</summary>
    /// <param name="chance">0 to 1.</param>
    public static string Percent(double chance) => chance switch
    {
        < 0.01 => "less than 1 %",
        > 0.99 => "more than 99 %",
        _ => $"{Math.Round(chance * 100).ToString("0", CultureInfo.InvariantCulture)} %",
    };
}
