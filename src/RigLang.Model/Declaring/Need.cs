namespace RigLang.Model.Declaring;

/// <summary>When a fact is asked for.</summary>
public enum Need
{
    /// <summary>Never asked for.</summary>
    Never,

    /// <summary>Asked for by the results that read it.</summary>
    ForResults,

    /// <summary>Wanted for the first verdict: axle loads and ratings.</summary>
    ForVerdict,
}
