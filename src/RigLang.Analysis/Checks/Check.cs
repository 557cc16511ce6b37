using System.Collections.Immutable;
using RigLang.Analysis.Curing;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Linking;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks;

/// <summary>A check: its declaration and its logic, in one file. Which base class it has says what it looks at.</summary>
public abstract class Check
{
    public abstract CheckDeclaration Declaration { get; }

    /// <summary>What may be changed to cure its findings, the likeliest first; empty where no number cures them.</summary>
    public virtual ImmutableArray<Lever> Cures => [];

    /// <summary>What a finding is about, in the numbers of a study in which it may be cured: "axle rear 1712 kg of 1720 kg". Null where there is no such number.</summary>
    public virtual string? Figure(Study study, Finding finding) => null;

    private protected Finding Report(Place place, string message) => new(Declaration, place, message);

    /// <summary>" (estimated)" behind a number that rests on estimates.</summary>
    private protected static string Mark(Node node) => node.IsEstimated ? " (estimated)" : "";
}

/// <summary>Looks at any declaration by itself. What it finds is kept while the declaration is the same object, so it may look at nothing else.</summary>
public abstract class DeclarationCheck : Check
{
    public abstract IEnumerable<Finding> Run(Declaration declaration);
}

/// <summary>Looks at a declaration among the others in sight; run again whenever anything changes.</summary>
public abstract class WorkspaceCheck : Check
{
    public abstract IEnumerable<Finding> Run(Workspace workspace, Declaration declaration);
}

/// <summary>Looks at a rig with its parts. What it finds is kept while all of them are the same objects.</summary>
public abstract class RigCheck : Check
{
    public abstract IEnumerable<Finding> Run(RigStudy rig);

    /// <summary>A finding at the rig's line of that keyword; at the rig's name where it has none, or where the line is inherited and so stands elsewhere.</summary>
    private protected Finding Report(RigStudy rig, FactDeclaration line, string message) => Report(rig, rig.Rig.Find(line), message);

    /// <summary>The same at one of several lines of a keyword.</summary>
    private protected Finding Report(RigStudy rig, Fact? line, string message) =>
        Report(line is not null && IsOwn(rig, line) ? line.Place : rig.Parts.Rig.Own.NamePlace, message);

    /// <summary>Whether the line stands in the rig itself. What an inherited line shows by itself is reported where it is written.</summary>
    private protected static bool IsOwn(RigStudy rig, Fact line) => line.Place.Declaration == rig.Parts.Rig.Own.Syntax;
}
