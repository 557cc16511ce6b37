using RigLang.Model.Binding;

namespace RigLang.Analysis.Tracking;

/// <summary>Whose a fact is, in words.</summary>
internal static class OwnerWords
{
    /// <summary>" of axle rear, vehicle van"; empty for a block that belongs to nobody.</summary>
    public static string Of(Block block)
    {
        var names = block.Path[(block.Path.IndexOf('#', StringComparison.Ordinal) + 1)..].Split('/');
        return names[0].Length == 0 ? "" : " of " + string.Join(", ", names.Reverse());
    }
}
