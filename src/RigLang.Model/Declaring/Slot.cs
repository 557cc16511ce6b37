namespace RigLang.Model.Declaring;

/// <summary>
/// One place in a line. Slots without a <paramref name="Lead"/> come first and in order; slots with one are phrases, in any order behind them:
/// the joining word, then what the form asks for. A <see cref="PositionForm"/> has the lead <c>at</c>.
/// </summary>
/// <param name="Role">What the value is, for messages and for reading it back: "mass", "speed".</param>
public sealed record Slot(string Role, SlotForm Form, string? Lead = null, bool IsOptional = false);
