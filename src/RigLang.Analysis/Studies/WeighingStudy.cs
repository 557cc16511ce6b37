using System.Collections.Immutable;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Model.Linking;

namespace RigLang.Analysis.Studies;

/// <summary>A visit to the scale with the rig as it was loaded that day.</summary>
public sealed class WeighingStudy : Study, ISubject
{
    private readonly RigStudy whole;

    public WeighingStudy(WeighingParts parts)
    {
        Parts = parts;
        whole = new RigStudy(parts.Rig!);
        Passes = [.. Block.AllBlocks(PassFacts.Block).Select(pass => new PassSubject(this, pass, new RigStudy(parts.Rig! with { Absent = AbsentIn(pass) })))];
    }

    private WeighingStudy(WeighingStudy original, Variation variation)
        : base(original, variation)
    {
        Parts = original.Parts;
        whole = original.whole.With(variation);
        Passes = [.. original.Passes.Select(pass => new PassSubject(this, pass.Block, pass.Rig.With(variation)))];
    }

    public WeighingParts Parts { get; }

    public string Title => $"weighing {Parts.Weighing.Name}";

    Study ISubject.Study => this;

    public Block Block => Parts.Weighing.Block;

    /// <summary>The rig that was weighed, everybody aboard.</summary>
    public RigStudy Rig => Passes.IsEmpty ? whole : Passes[0].Rig;

    /// <summary>In file order.</summary>
    public ImmutableArray<PassSubject> Passes { get; }

    /// <summary>The first pass in that state, or null.</summary>
    public PassSubject? Pass(string state) => Passes.FirstOrDefault(pass => pass.State == state);

    public override IReadOnlyDictionary<FactDeclaration, Assumption> Assumptions => Rig.Assumptions;

    public override WeighingStudy With(Variation variation) => new(this, variation);

    public override IEnumerable<Study> Inner => Passes.Select(pass => pass.Rig).Append(whole);

    private protected override IEnumerable<ISubject> ListSubjects() => [this, .. Passes, .. Passes.SelectMany(pass => pass.Readings)];

    private static ImmutableHashSet<string> AbsentIn(Block pass) => [.. pass.All(PassFacts.Absent).Select(line => line.Key)];
}

/// <summary>One drive over the scale.</summary>
public sealed class PassSubject : ISubject
{
    public PassSubject(WeighingStudy weighing, Block pass, RigStudy rig)
    {
        Weighing = weighing;
        Block = pass;
        Rig = rig;
        Readings = [.. ReadingSubject.Of(this)];
    }

    public WeighingStudy Weighing { get; }

    public Block Block { get; }

    /// <summary>The rig with those who had stepped out left out.</summary>
    public RigStudy Rig { get; }

    public string State => Block.Opener?.WordOf("state") ?? "";

    public Study Study => Weighing;

    public string Title => $"pass {Block.Key}";

    /// <summary>What was read, left and right wheels put together.</summary>
    public ImmutableArray<ReadingSubject> Readings { get; }

    /// <summary>The reading of exactly these axles, or null.</summary>
    public ReadingSubject? Reading(string axles) => Readings.FirstOrDefault(reading => reading.Axles == axles);
}

/// <summary>What the weighing names, looked up.</summary>
public sealed record WeighingParts(Declaration Weighing, RigParts? Rig)
{
    public static WeighingParts Of(Workspace workspace, Declaration weighing)
    {
        var rig = weighing.Block.Find(WeighingFacts.Rig) is { } line ? RigParts.Named(workspace, line, DeclarationKind.Rig) : null;
        if (rig is null)
        {
            return new WeighingParts(weighing, null);
        }

        var parts = RigParts.Of(workspace, rig);
        return new WeighingParts(
            weighing, weighing.Block.All(WeighingFacts.Load).IsEmpty ? parts : parts with { Loads = RigParts.LoadsNamed(workspace, weighing.Block, WeighingFacts.Load) });
    }

    public bool SameAs(WeighingParts other) =>
        ReferenceEquals(Weighing, other.Weighing) && Rig is { } mine && other.Rig is { } theirs && mine.SameAs(theirs);
}
