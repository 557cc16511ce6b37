using System.Collections.Immutable;

namespace RigLang.Syntax.Tree;

/// <summary>
/// A statement with the statements indented under it. <see cref="Line"/> is counted from the declaration's first line, so the node moves with it unchanged.
/// </summary>
public sealed record NodeSyntax(int Line, FactSyntax Fact, ImmutableArray<NodeSyntax> Children);
