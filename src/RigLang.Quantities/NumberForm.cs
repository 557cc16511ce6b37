namespace RigLang.Quantities;

/// <summary>The forms in which a number can be written.</summary>
public enum NumberShape
{
    /// <summary>"2.88", "10_400".</summary>
    Decimal,

    /// <summary>"5/16", "2-5/16": only before in and ft.</summary>
    Fraction,

    /// <summary>"1:16": a slope; the value is the tangent, 1/16.</summary>
    Slope,
}

/// <summary>How a number was written.</summary>
/// <param name="Shape">Which of the three forms.</param>
/// <param name="Decimals">Digits behind the point; for a fraction as many as show its steps apart (2 for sixteenths).</param>
/// <param name="SignificantDigits">Digits from the first that is not zero.</param>
public readonly record struct NumberForm(NumberShape Shape, int Decimals, int SignificantDigits);
