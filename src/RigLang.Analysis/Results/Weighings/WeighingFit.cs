using System.Collections.Immutable;
using RigLang.Analysis.Results.Loads;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Results.Weighings;

/// <summary>All readings of a weighing solved together.</summary>
/// <param name="Groups">The readings, in the order of the fit's residuals.</param>
/// <param name="Solved">The unknowns with the residual of each reading.</param>
/// <param name="OutOfLine">The one group that doesn't belong to the others, or null.</param>
/// <param name="OffOthers">How much more that one says than the others make of it, N.</param>
internal sealed record WeighingFit(ImmutableArray<WeighedGroup> Groups, WeighbridgeFit Solved, WeighedGroup? OutOfLine, double OffOthers)
{
    /// <summary>Doesn't apply to a weighing without a reading of whole axles.</summary>
    public static Computation<WeighingStudy, WeighingFit?> Of { get; } = new("all readings solved together", (read, weighing) =>
    {
        var groups = weighing.Passes.SelectMany(WeighedGroup.Of).ToImmutableArray();
        if (groups.IsEmpty)
        {
            read.NotApplicable();
            return null;
        }

        var readings = groups.Select(group => new ScaleReading(group.State, group.Parts, group.Load(read), Error(group.Doubt(read)))).ToArray();
        var (wheelbase, overhang, axle) = (double.NaN, double.NaN, double.NaN);
        if (groups.Any(group => group.State != WeighingState.Apart))
        {
            wheelbase = read.Quantity(weighing.Rig.Vehicle, VehicleFacts.Wheelbase);
            overhang = read.Get(Geometry.Overhang, weighing.Rig);
        }

        if (groups.Any(group => group.State == WeighingState.Set))
        {
            axle = read.Get(Geometry.EquivalentAxle, weighing.Rig);
        }

        if (read.HasMissing)
        {
            return null;
        }

        var (outOfLine, off) = WeighbridgeFit.OutOfLine(readings, wheelbase, overhang, axle);
        return new WeighingFit(groups, WeighbridgeFit.Of(readings, wheelbase, overhang, axle), outOfLine is { } index ? groups[index] : null, off);
    });

    /// <summary>What the readings in excess of the unknowns differ by, in N; null where the group is not in the fit or nothing is in excess.</summary>
    public double? Residual(Func<WeighedGroup, bool> isIt)
    {
        var index = Groups.IndexOf(Groups.FirstOrDefault(isIt)!);
        return index < 0 || double.IsNaN(Solved.Fit.Spread) ? null : Solved.Fit.Residuals[index];
    }

    /// <summary>Where the readings scatter by more than the scale's steps, the scatter counts.</summary>
    public double Widening => Solved.Fit.Spread > 1 ? Solved.Fit.Spread : 1;

    /// <summary>N. A reading is good to its steps and as likely anywhere between: its standard deviation is the half-width over √3.</summary>
    private static double Error(double doubt) => Constants.Gravity * doubt / Math.Sqrt(3);
}
