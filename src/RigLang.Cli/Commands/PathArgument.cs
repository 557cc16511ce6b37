using System.CommandLine.Parsing;

namespace RigLang.Cli.Commands;

/// <summary>Arguments that take any words would take a mistyped option too.</summary>
internal static class PathArgument
{
    public static void RefuseOptions(ArgumentResult result)
    {
        foreach (var word in result.Tokens.Select(token => token.Value).Where(word => word.Length > 1 && word.StartsWith('-')))
        {
            result.AddError(UsageTrouble.UnknownOption(word, result.Parent as CommandResult));
        }
    }
}
