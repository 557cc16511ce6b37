namespace RigLang.Model.Declaring;

/// <summary>A change that somebody would make to see what comes of it: half a metre, five kilometres per hour.</summary>
/// <param name="Role">Of the slot; of a place, along the vehicle.</param>
/// <param name="Metric">SI, for who writes in metric units.</param>
/// <param name="Us">SI, for who writes in customary units: a round figure there.</param>
public sealed record SensibleStep(string Role, double Metric, double Us);
