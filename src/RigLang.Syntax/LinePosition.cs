namespace RigLang.Syntax;

/// <summary>A place in a file: line and UTF-16 unit in that line, both counted from 0.</summary>
public readonly record struct LinePosition(int Line, int Character) : IComparable<LinePosition>
{
    public int CompareTo(LinePosition other) => Line != other.Line ? Line.CompareTo(other.Line) : Character.CompareTo(other.Character);

    public static bool operator <(LinePosition left, LinePosition right) => left.CompareTo(right) < 0;

    public static bool operator >(LinePosition left, LinePosition right) => left.CompareTo(right) > 0;

    public static bool operator <=(LinePosition left, LinePosition right) => left.CompareTo(right) <= 0;

    public static bool operator >=(LinePosition left, LinePosition right) => left.CompareTo(right) >= 0;
}
