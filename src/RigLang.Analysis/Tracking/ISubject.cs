namespace RigLang.Analysis.Tracking;

/// <summary>What a computation is about: a rig, an axle of it, a leg of a trip, a pass over the scale. One object each in a study.</summary>
public interface ISubject
{
    Study Study { get; }

    /// <summary>"rig coast", "leg quarry", "axle front".</summary>
    string Title { get; }
}
