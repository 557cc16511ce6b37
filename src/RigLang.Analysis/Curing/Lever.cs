using System.Collections.Immutable;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Quantities;

namespace RigLang.Analysis.Curing;

/// <summary>
/// Something that a person can change to cure a finding: declared once, named by each check that it may cure. Which of the things that it finds in a rig or trip
/// cure anything, and by how much they have to change, is found by trying.
/// </summary>
/// <param name="Words">As it stands on the check's page: "move an item of a load".</param>
/// <param name="Find">The numbers of a study that can be changed so, for one finding.</param>
public sealed record Lever(string Words, Func<Study, Finding, IEnumerable<Handle>> Find)
{
    /// <summary>Only tried where nothing else has been found, and of what it finds the first is enough.</summary>
    public bool IsLastResort { get; init; }

    /// <summary>Lines that can be added, for what no number of the files can be changed.</summary>
    public Func<TripStudy, Finding, IEnumerable<Insertion>>? Insert { get; init; }
}

/// <summary>A number that can be changed, between two ends.</summary>
/// <param name="Fact">Which number.</param>
/// <param name="Now">SI; what counts now.</param>
/// <param name="Low">SI; the least that it may become.</param>
/// <param name="High">SI; the most.</param>
/// <param name="Unit">In which its author writes.</param>
/// <param name="Decimals">Digits behind the point; what is found is a multiple of the last one.</param>
/// <param name="Put">For a value in SI: what to call the change, and what to write where.</param>
public sealed record Handle(FactRef Fact, double Now, double Low, double High, Unit Unit, int Decimals, Func<double, Change> Put)
{
    /// <summary>For what is there or isn't: the one value that it can have instead.</summary>
    public double? Only { get; init; }

    /// <summary>Other numbers that get the same value with it.</summary>
    public ImmutableArray<FactRef> Beside { get; init; } = [];

    internal Variation With(double value) => Variation.Of(Values(value));

    /// <summary>The same with another value.</summary>
    internal Variation With(Variation tried, double value) => tried.At(Values(value));

    private IEnumerable<KeyValuePair<FactRef, double>> Values(double value) => Beside.Prepend(Fact).Select(fact => new KeyValuePair<FactRef, double>(fact, value));
}

/// <summary>A change of the files.</summary>
/// <param name="Words">"Move bicycles 1.2 m forward".</param>
public sealed record Change(string Words, ImmutableArray<Replacement> Edits)
{
    public Change(string words, Place place, string newText)
        : this(words, [new Replacement(place, newText)])
    {
    }
}

/// <summary>A line or block to add, of which the first figure that cures is taken.</summary>
/// <param name="Changes">By rising figure.</param>
public sealed record Insertion(IEnumerable<Change> Changes);
