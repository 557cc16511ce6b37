using System.Collections.Concurrent;
using System.Collections.Immutable;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Studies;

/// <summary>A rig with its parts, ready to be asked for results. A part that isn't named, or isn't found, is an empty block: every read of it misses.</summary>
public sealed class RigStudy : Study, ISubject
{
    private readonly Lazy<Practice> practice;
    private readonly ConcurrentDictionary<double, RigStudy> atSpeed = new();

    public RigStudy(RigParts parts)
        : this(parts, null, null)
    {
    }

    private RigStudy(RigParts parts, RigStudy? original, Variation? variation)
        : base(original, variation)
    {
        Parts = parts;
        Vehicle = parts.Vehicle?.Block ?? original?.Vehicle ?? Empty(VehicleFacts.Block, "vehicle");
        Trailer = parts.Trailer?.Block ?? original?.Trailer ?? Empty(TrailerFacts.Block, "trailer");
        Hitch = parts.Hitch?.Block ?? original?.Hitch ?? Empty(HitchFacts.Block, "hitch");
        practice = original?.practice ?? new Lazy<Practice>(() => Practice.Of(parts.Practice));
        VehicleAxles = AxlesOf(Vehicle, AxleFacts.Vehicle, isTrailer: false);
        TrailerAxles = AxlesOf(Trailer, AxleFacts.Trailer, isTrailer: true);
    }

    public RigParts Parts { get; }

    public override RigStudy With(Variation variation) => new(Parts, this, variation);

    /// <summary>The same rig with another value (SI) for one fact.</summary>
    public RigStudy With(Block block, FactDeclaration fact, double value) => With(Variation.Of(FactRef.Of(block, fact), value));

    /// <summary>The same rig at another speed (m/s). Kept, since several checks and cards ask for the same one.</summary>
    public RigStudy AtSpeed(double speed) => atSpeed.GetOrAdd(speed, other => With(Rig, RigFacts.Speed, other));

    private protected override IEnumerable<ISubject> ListSubjects() => [this, .. VehicleAxles, .. TrailerAxles];

    public string Title => $"rig {Parts.Rig.Name}";

    Study ISubject.Study => this;

    /// <summary>The rig's own lines.</summary>
    public Block Rig => Parts.Rig.Block;

    public Block Vehicle { get; }

    public Block Trailer { get; }

    public Block Hitch { get; }

    /// <summary>Whether the rig names a trailer; when it doesn't, it is driven solo.</summary>
    public bool HasTrailer => Rig.Find(RigFacts.Trailer) is not null;

    /// <summary>Whether the rig names a hitch; when it doesn't, the trailer hangs on the vehicle's own ball.</summary>
    public bool HasHitch => Rig.Find(RigFacts.Hitch) is not null;

    public bool IsDistributing => Parts.Hitch?.Block.Find(HitchFacts.Type)?.WordOf(Signature.ValueRole) == "weight-distributing";

    public IEnumerable<Block> Loads => Parts.Loads.Select(load => load.Block);

    /// <summary>Front, then rear.</summary>
    public ImmutableArray<AxleSubject> VehicleAxles { get; }

    /// <summary>One for each axle block; a block with <c>count 2</c> is one subject that stands for two equal axles.</summary>
    public ImmutableArray<AxleSubject> TrailerAxles { get; }

    public IEnumerable<AxleSubject> Axles => VehicleAxles.Concat(TrailerAxles);

    public Practice Practice => practice.Value;

    public override IReadOnlyDictionary<FactDeclaration, Assumption> Assumptions => Practice.Assumptions;

    private ImmutableArray<AxleSubject> AxlesOf(Block owner, AxleFacts facts, bool isTrailer) =>
        [.. owner.AllBlocks(facts.Block).OrderBy(axle => !isTrailer && axle.Key == "rear").Select(axle => new AxleSubject(this, axle, facts, isTrailer))];

    private static Block Empty(BlockDeclaration declaration, string what) => new(declaration, $"{NoSuchPart}{what} that the rig names and that can be found", null, [], []);
}

/// <summary>An axle of a rig.</summary>
public sealed class AxleSubject(RigStudy rig, Block axle, AxleFacts facts, bool isTrailer) : ISubject
{
    public RigStudy Rig { get; } = rig;

    public Block Axle { get; } = axle;

    public AxleFacts Facts { get; } = facts;

    public bool IsTrailer { get; } = isTrailer;

    public Study Study => Rig;

    public string Title => $"{(IsTrailer ? "trailer" : "vehicle")} axle {Axle.Key}";
}
