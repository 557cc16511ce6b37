namespace RigLang.Quantities;

/// <summary>What can be the matter with a unit.</summary>
public enum UnitProblemKind
{
    /// <summary>There is no text.</summary>
    Missing,

    /// <summary>No such unit; near spellings may be suggested.</summary>
    Unknown,

    /// <summary>The spelling stands for several units (ton, gal, hp, lb·ft): the choices are suggested.</summary>
    Ambiguous,

    /// <summary>Capitals and small letters mixed up: KM, kw.</summary>
    CaseSlip,

    /// <summary>A known word or sign for a unit that is spelt otherwise here: lbs, kph, inches.</summary>
    OtherSpelling,

    /// <summary>A unit, but of something else.</summary>
    WrongDimension,

    /// <summary>kg or lb where a force is wanted.</summary>
    MassForForce,

    /// <summary>N or lbf where a mass is wanted.</summary>
    ForceForMass,

    /// <summary>A unit behind what has none.</summary>
    NotWanted,
}

/// <summary>Why a unit could not be taken.</summary>
/// <param name="Kind">What sort of problem.</param>
/// <param name="Message">One sentence or two, without the place.</param>
/// <param name="Suggestions">Units to write in its place, best first; may be empty.</param>
/// <param name="Read">The unit as understood, when there is one: of another dimension, or the only one that the slip can mean.</param>
public sealed record UnitProblem(UnitProblemKind Kind, string Message, IReadOnlyList<string> Suggestions, Unit? Read = null)
{
    /// <summary>The suggestions are simply the units that would do; otherwise they are what was probably meant.</summary>
    public bool IsOffer { get; internal init; }
}
