namespace RigLang.Published;

/// <summary>How a published number came here.</summary>
public enum Provenance
{
    /// <summary>The named text or data set was read.</summary>
    Read,

    /// <summary>Inputs and result are recalled from the named source, and the arithmetic between them closes.</summary>
    ValueFromMemory,

    /// <summary>A fact of the trade without one text behind it.</summary>
    CommonPractice,
}

/// <summary>One number of the outside world that a model of this program must give.</summary>
/// <param name="Model">The model it tests, in plain words.</param>
/// <param name="Source">The text or data set, as one would cite it.</param>
/// <param name="Provenance">How the number came here.</param>
/// <param name="Inputs">What goes in, as the source states it.</param>
/// <param name="Quantity">What comes out, with its unit.</param>
/// <param name="Expected">The published value.</param>
/// <param name="Tolerance">What the source's own rounding allows, in the same unit.</param>
/// <param name="Compute">Gives the program's value, in the same unit.</param>
public sealed record PublishedCheck(
    string Model, string Source, Provenance Provenance, string Inputs, string Quantity, double Expected, double Tolerance, Func<double> Compute)
{
    /// <summary>Tells the check apart from every other.</summary>
    public string Name => $"{Model}: {Quantity}; {Inputs} [{Source}]";

    /// <summary>The program's value.</summary>
    public double Got => Compute();

    /// <summary>Whether the program's value is within the tolerance.</summary>
    public bool Holds => Math.Abs(Got - Expected) <= Tolerance;
}
