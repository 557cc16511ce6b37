using RigLang.Analysis;
using RigLang.Analysis.Results;
using RigLang.Analysis.Studies;
using RigLang.Model.Declaring;
using RigLang.Model.Files;
using RigLang.Model.Linking;

namespace RigLang.Benchmarks;

/// <summary>A trip in an editor: opened from nothing, or with another speed typed for one leg.</summary>
public sealed class TripSession
{
    private static readonly FileId File = new("/rigs/trip.rig");
    private static readonly IResult[] OfTrips = [.. Catalogue.Of(ResultScope.Trip).Where(result => result.Name != "fastest-time")], OfLegs = [.. Catalogue.Of(ResultScope.Leg)], OfStops = [.. Catalogue.Of(ResultScope.Stop)];

    private readonly string text;
    private readonly string track;
    private WorkspaceAnalysis analysis;

    public TripSession(string text, string track)
    {
        this.text = text;
        this.track = track;
        analysis = Opened();
    }

    /// <summary>Reads files and track anew and computes every result of the trip, its legs and stops; how many have a value.</summary>
    public int Open()
    {
        analysis = Opened();
        return Compute();
    }

    /// <summary>Types another speed and computes all again.</summary>
    public int ChangeSpeed(int speed)
    {
        analysis = analysis.With(analysis.Workspace.WithOpen(RigFile.Parse(File, GeneratedTrips.WithTrack(speed))));
        return Compute();
    }

    /// <summary>Solves the trip in a state of its own; s from start to end.</summary>
    public double Solve() => Catalogue.FindResult("fastest-time")!.Compute(new WorkspaceAnalysis(analysis.Workspace).Trip(Declared())!)!.Value;

    private WorkspaceAnalysis Opened() => new(new Workspace(new MemoryFileSource(("/rigs/far.gpx", track)), "/rigs").WithOpen(RigFile.Parse(File, text)));

    private int Compute()
    {
        var trip = analysis.Trip(Declared())!;
        var computed = OfTrips.Count(result => result.Compute(trip)!.IsComputed);
        foreach (var leg in trip.Legs)
        {
            computed += OfLegs.Count(result => result.Compute(leg)!.IsComputed);
            computed += leg.Stop is { } stop ? OfStops.Count(result => result.Compute(stop)!.IsComputed) : 0;
        }

        return computed;
    }

    private Declaration Declared() => analysis.Workspace.Link(File)!.Declarations.Single(declaration => declaration.Kind == DeclarationKind.Trip);
}
