using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Results.Runs;

/// <summary>The drives of a rig fitted together.</summary>
/// <param name="Fit">Rolling on asphalt and drag area; not known where the drives can't tell them.</param>
/// <param name="Drives">How many logged drives went into it.</param>
/// <param name="Coasts">How many coast-downs.</param>
/// <param name="Speed">Of the drives, on the mean, m/s; of coast-downs NaN.</param>
internal sealed record RoadFit(RunFit Fit, int Drives, int Coasts, double Speed);

/// <summary>Standard deviations of what was fitted.</summary>
internal readonly record struct FitDoubt(double Rolling, double DragArea);

/// <summary>Fits rolling and drag area to the drives of a rig by the model that trips are planned with.</summary>
internal static class Fitting
{
    // Only where the search begins; the answer doesn't rest on it.
    private const double UsualRolling = 0.010, UsualDrag = 1;

    /// <summary>Doesn't apply to one drive alone: it tells rolling and air only together.</summary>
    public static Computation<RunSetStudy, RoadFit?> Fit { get; } = new("rolling and drag area fitted", (read, set) =>
    {
        var drives = new List<FittedDrive>();
        var coasts = new List<RoadLoadReading>();
        foreach (var run in set.Runs)
        {
            // A drive that lacks something is left out; a check says so where it stands.
            if (read.TryGet(FittedDrive.Of, run, out var drive) && drive is not null)
            {
                drives.Add(drive);
            }

            if (read.TryGet(Coasting.Reading, run, out var coast) && coast.DragArea > 0)
            {
                coasts.Add(coast);
            }
        }

        if (drives.Count < 2 && coasts.Count == 0)
        {
            read.NotApplicable();
            return null;
        }

        // What a missed wind is worth rests on the drag area: once from a guess, then from the answer.
        var fit = RoadLoadFit.Of([.. drives.Select(drive => drive.Near(UsualRolling, UsualDrag))], coasts, UsualRolling, UsualDrag);
        if (fit.Fit.IsDetermined && !double.IsNaN(fit.DragArea))
        {
            fit = RoadLoadFit.Of([.. drives.Select(drive => drive.Near(fit.Rolling, fit.DragArea))], coasts, fit.Rolling, fit.DragArea);
        }

        // Where a number is missing there is nothing left over either.
        if (double.IsNaN(fit.DragArea) && !fit.Fit.Residuals.Any(double.IsNaN))
        {
            read.Refuse(fit.Fit.IsDetermined
                ? "the drives fit no rolling and drag above zero; one of them is of another day's load, wind or climb"
                : "the drives are too much alike in speed to tell rolling from air");
        }

        return new RoadFit(fit, drives.Count, coasts.Count, drives.Count > 0 ? drives.Average(drive => drive.Speed) : double.NaN);
    });

    /// <summary>
    /// From the scatter of the drives, or from what is said of each where that is more; and from what all of them share: a drive efficiency, a mass that is not
    /// quite known moves the answer and does not average out.
    /// </summary>
    public static Computation<RunSetStudy, FitDoubt> Doubt { get; } = new("doubt of the fit", (read, set) =>
    {
        if (read.Get(Fit, set) is not { Fit: { DragArea: > 0 } fit })
        {
            return new FitDoubt(double.NaN, double.NaN);
        }

        var spread = fit.Fit.Spread > 1 ? fit.Fit.Spread : 1;
        var (rolling, drag) = (Square(fit.RollingError * spread), Square(fit.DragAreaError * spread));
        foreach (var fact in Ground.Of(set.Compute(Fit, set)).Where(IsShared))
        {
            var other = set.With(fact.Block, fact.Fact, fact.Value + (fact.HalfWidth / 2));
            if (other.Compute(Fit, other).Value is { Fit: { DragArea: > 0 } moved })
            {
                rolling += Square(moved.Rolling - fit.Rolling);
                drag += Square(moved.DragArea - fit.DragArea);
            }
        }

        return new FitDoubt(Math.Sqrt(rolling), Math.Sqrt(drag));
    });

    /// <summary>What the display said before and after is in the weight of the drive already.</summary>
    private static bool IsShared(FactRead read) =>
        read.HalfWidth > 0 && !double.IsNaN(read.Value) && read.Fact != RunFacts.ChargeBefore && read.Fact != RunFacts.ChargeAfter;

    private static double Square(double x) => x * x;
}
