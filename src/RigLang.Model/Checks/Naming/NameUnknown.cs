using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Syntax;
using RigLang.Syntax.Checks;

namespace RigLang.Model.Checks.Naming;

/// <summary>A name is used that nothing in sight has.</summary>
public static class NameUnknown
{
    public static CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL157",
        Slug = "name-unknown",
        Severity = Severity.Error,
        Summary = "A name is used that nothing in sight has.",
        Why = "A rig without its vehicle or a level without its tank computes nothing.",
        Bad = """
            rig coast
                vehicle van
            """,
        Good = """
            vehicle van

            rig coast
                vehicle van
            """,
        Fix = "Write the name of something in this file, or show this file another with `use`.",
        CanBeAllowed = false,
    };

    public static Finding Report(Place place, string kind, IEnumerable<string> inSight, string? advice = null)
    {
        var name = place.Text;
        var names = inSight.ToList();
        var near = Spelling.Nearest(name, names);
        var message = $"No {kind} in sight is named `{name}`.";
        if (near is not null)
        {
            return new Finding(Declaration, place, $"{message} Did you mean `{near}`?") { Fixes = [new Fix($"Write `{near}`", place, near)] };
        }

        message += names.Count switch
        {
            _ when advice is not null => advice,
            0 => $" There is none in this file or in those that it uses; `use \"path\"` in the first column shows it another file.",
            <= 6 => $" There is {string.Join(", ", names.Select(known => $"`{known}`"))}.",
            _ => "",
        };
        return new Finding(Declaration, place, message);
    }
}
