using RigLang.Editing.Locating;
using RigLang.Syntax.Tree;

namespace RigLang.Editing.Hovering;

/// <summary>A point that positions are counted from, and the words around it.</summary>
internal static class PointCard
{
    public static CardText? Of(Spot spot, WordSyntax word) => Meaning(word.Text) is { } meaning
        ? new CardText().Paragraph($"**{word.Text}**").Paragraph(meaning)
        : null;

    public static string? Meaning(string word) => word switch
    {
        "front-axle" => "The vehicle's front axle, middle of the wheels",
        "rear-axle" => "The vehicle's rear axle, middle of the wheels",
        "ball" => "The centre of the tow ball",
        "pin" => "The pin hole of the vehicle's receiver tube",
        "coupling" => "The centre of the ball that the trailer is coupled to",
        "body" => "The front wall of the trailer's body; needs `coupling-to-body`",
        "axle" => "The middle of all the trailer's axles",
        "behind" => "Towards the rear of the point that follows",
        "ahead" or "of" => "Towards the front of the point that follows",
        _ => null,
    };
}
