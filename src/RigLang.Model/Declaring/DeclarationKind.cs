namespace RigLang.Model.Declaring;

/// <summary>What a line in the first column may open.</summary>
public enum DeclarationKind
{
    Vehicle,
    Trailer,
    Hitch,
    Load,
    Rig,
    Trip,
    Weighing,
    Run,
    Practice,
}

/// <summary>The keywords of the kinds.</summary>
public static class DeclarationKinds
{
    public static IReadOnlyList<DeclarationKind> All { get; } = Enum.GetValues<DeclarationKind>();

    public static string Keyword(this DeclarationKind kind) => kind switch
    {
        DeclarationKind.Vehicle => "vehicle",
        DeclarationKind.Trailer => "trailer",
        DeclarationKind.Hitch => "hitch",
        DeclarationKind.Load => "load",
        DeclarationKind.Rig => "rig",
        DeclarationKind.Trip => "trip",
        DeclarationKind.Weighing => "weighing",
        DeclarationKind.Run => "run",
        _ => "practice",
    };

    public static DeclarationKind? Find(string keyword)
    {
        foreach (var kind in All)
        {
            if (kind.Keyword() == keyword)
            {
                return kind;
            }
        }

        return null;
    }
}
