using RigLang.Analysis.Results;

namespace RigLang.Analysis.Checks.Questions;

/// <summary>What a result is a result of, in words.</summary>
internal static class ScopeWords
{
    public static string Of(ResultScope scope) => scope switch
    {
        ResultScope.Rig => "a rig",
        ResultScope.Axle => "an axle",
        ResultScope.Trip => "a trip",
        ResultScope.Leg => "a leg of a trip",
        ResultScope.Stop => "a stop",
        ResultScope.Weighing => "a weighing",
        ResultScope.Reading => "a reading of a scale",
        ResultScope.Run => "a run",
        _ => "runs taken together",
    };
}
