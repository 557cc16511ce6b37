namespace RigLang.Model.Declaring;

/// <summary>"a length", "an angle".</summary>
internal static class Article
{
    public static string With(string noun) => ("aeiou".Contains(noun[0], StringComparison.Ordinal) ? "an " : "a ") + noun;
}
