using RigLang.Mechanics;
using RigLang.Quantities;

namespace RigLang.Analysis.Solving;

/// <summary>
/// Looks for the values of one number for which a function of it meets a wish. The range is sampled evenly, finer where the function turns or has gaps; each
/// change of sign is closed in on by Brent's method, each turn that comes near the wish by golden sections. No place within the range is taken twice.
/// </summary>
internal sealed class GoalSearch
{
    private const int Coarse = 12;
    private const int Fine = 60;
    private const int MostWhole = 200;
    private const double Even = 1e-9;

    private readonly Func<double, double> function;
    private readonly double low;
    private readonly double high;
    private readonly bool isWhole;
    private double step;
    private readonly Dictionary<double, double> known = [];

    /// <param name="function">NaN where it can't be computed.</param>
    /// <param name="low">Lower end.</param>
    /// <param name="high">Upper end, above the lower.</param>
    /// <param name="isWhole">Only whole numbers count.</param>
    public GoalSearch(Func<double, double> function, double low, double high, bool isWhole)
    {
        (this.function, this.low, this.high, this.isWhole) = (function, low, high, isWhole);
        Samples = isWhole ? WholeSamples() : EvenSamples();
    }

    /// <summary>Where it was looked at, ascending, those that can't be computed left out.</summary>
    public List<double> Samples { get; }

    public double At(double x)
    {
        if (!known.TryGetValue(x, out var value))
        {
            known[x] = value = function(x);
        }

        return value;
    }

    /// <summary>All places where the function takes the value, ascending.</summary>
    /// <param name="target">The wished value.</param>
    /// <param name="usual">Of a stretch on which every place does, the one nearest to this is taken.</param>
    public List<double> Places(double target, double usual)
    {
        var places = Samples.Where(x => Limits.Same(At(x), target)).ToList();
        if (places.Count > 2)
        {
            // A stretch on which nothing changes is one answer.
            places = [places.MinBy(x => Math.Abs(x - usual))];
        }

        if (!isWhole)
        {
            foreach (var (a, b) in Pairs())
            {
                if ((At(a) - target) * (At(b) - target) < 0)
                {
                    places.AddRange(Root.Find(At, a, b, target, 1).Places);
                }
            }

            places.AddRange(NearTurns(target));
        }

        places.Sort();
        return Distinct(places);
    }

    /// <summary>The place where the function comes nearest to the value, and what keeps it from coming nearer; null where it is computed nowhere.</summary>
    public (double Place, Binding Binds)? Nearest(double target)
    {
        if (Samples.Count == 0)
        {
            return null;
        }

        foreach (var (a, b) in isWhole ? [] : Pairs())
        {
            if ((At(a) - target) * (At(b) - target) < 0 && Root.Find(At, a, b, target, 1).Places.Count == 0)
            {
                var (before, behind) = CloseIn(a, b, x => (At(x) - target) * (At(a) - target) > 0);
                return (Math.Abs(At(before) - target) <= Math.Abs(At(behind) - target) ? before : behind, Binding.Jump);
            }
        }

        return Best(x => -Math.Abs(At(x) - target));
    }

    /// <summary>The place where the score is highest, and what keeps it from being higher; null where it is computed nowhere.</summary>
    public (double Place, Binding Binds)? Best(Func<double, double> score, double usual = double.NaN)
    {
        if (Samples.Count == 0)
        {
            return null;
        }

        var top = Samples.Max(score);
        var even = Even * Math.Max(Math.Abs(top), Spread());
        var level = Samples.Where(x => score(x) >= top - even).ToList();
        var best = level.MinBy(x => double.IsNaN(usual) ? x : Math.Abs(x - usual));
        if (level.Count > 2 && level.Count < Samples.Count)
        {
            return (double.IsNaN(usual) ? Foot(level, score, top - even) : best, Binding.Flat);
        }

        var index = Samples.IndexOf(best);
        if (!isWhole)
        {
            var closer = Extremum.Least(x => -score(x), Samples[Math.Max(0, index - 1)], Samples[Math.Min(Samples.Count - 1, index + 1)], 2);
            if (!double.IsNaN(closer.Place) && -closer.Value > score(best) + even)
            {
                return (closer.Place, Binding.Turn);
            }
        }

        return (best, index == 0 ? EndAt(low, best, Binding.LowEnd) : index == Samples.Count - 1 ? EndAt(high, best, Binding.HighEnd) : Binding.Turn);
    }

    private static Binding EndAt(double end, double best, Binding binding) => best == end ? binding : Binding.NotComputed;

    /// <summary>Where a level stretch begins, seen from where the function still moves.</summary>
    private double Foot(List<double> level, Func<double, double> score, double least)
    {
        var first = Samples.IndexOf(level[0]);
        var last = Samples.IndexOf(level[^1]);
        return first > 0 ? CloseIn(Samples[first], Samples[first - 1], x => score(x) >= least).Before
            : last < Samples.Count - 1 ? CloseIn(Samples[last], Samples[last + 1], x => score(x) >= least).Before
            : level[0];
    }

    /// <summary>Halves a stretch until the two sides of what happens in it lie together.</summary>
    private static (double Before, double Behind) CloseIn(double before, double behind, Func<double, bool> isBefore)
    {
        for (var i = 0; i < 32; i++)
        {
            var middle = (before + behind) / 2;
            (before, behind) = isBefore(middle) ? (middle, behind) : (before, middle);
        }

        return (before, behind);
    }

    /// <summary>Neighbours with nothing between them that can't be computed.</summary>
    private IEnumerable<(double First, double Second)> Pairs() => Samples.Zip(Samples.Skip(1)).Where(pair => pair.Second - pair.First < 1.5 * step);

    private double Spread() => Samples.Max(At) - Samples.Min(At);

    /// <summary>Where the function turns before it reaches the value, or just after: the two places behind such a turn lie between two samples.</summary>
    private List<double> NearTurns(double target)
    {
        var places = new List<double>();
        for (var i = 1; i + 1 < Samples.Count; i++)
        {
            var (a, b, c) = (Samples[i - 1], Samples[i], Samples[i + 1]);
            var sign = Math.Sign(At(b) - target);
            double Off(double x) => sign * (At(x) - target);
            if (sign == 0 || !(Off(a) > 0) || !(Off(c) > 0) || !(Off(b) <= Off(a)) || !(Off(b) <= Off(c)) || (Off(b) == Off(a) && Off(b) == Off(c)))
            {
                continue;
            }

            var turn = Extremum.Least(Off, a, c, 2);
            if (turn.Value <= Even * Spread())
            {
                places.AddRange(turn.Value < 0 ? [.. Root.Find(At, a, turn.Place, target, 1).Places, .. Root.Find(At, turn.Place, c, target, 1).Places] : [turn.Place]);
            }
        }

        return places;
    }

    private List<double> Distinct(List<double> places)
    {
        var distinct = new List<double>();
        foreach (var place in places)
        {
            if (distinct.Count == 0 || place - distinct[^1] > 1e-7 * (high - low))
            {
                distinct.Add(place);
            }
        }

        return distinct;
    }

    private List<double> WholeSamples()
    {
        var (first, last) = (Math.Ceiling(low), Math.Floor(high));
        var step = Math.Max(1, Math.Ceiling((last - first) / MostWhole));
        var samples = new List<double>();
        for (var x = first; x <= last; x += step)
        {
            if (double.IsFinite(At(x)))
            {
                samples.Add(x);
            }
        }

        return samples;
    }

    private List<double> EvenSamples()
    {
        var samples = Sampled(Coarse);
        // A function that only rises or only falls hides nothing between its samples.
        return samples.Count == Coarse + 1 && IsMonotonic(samples) ? samples : Sampled(Fine);
    }

    private List<double> Sampled(int steps)
    {
        step = (high - low) / steps;
        var samples = new List<double>();
        var (before, isKnown) = (low, false);
        for (var i = 0; i <= steps; i++)
        {
            var x = i == steps ? high : low + ((high - low) * i / steps);
            var isComputed = double.IsFinite(At(x));
            if (i > 0 && isComputed != isKnown)
            {
                // The last place where it is still computed counts as a sample: what lies beyond is nobody's.
                samples.Add(isKnown ? CloseIn(before, x, y => double.IsFinite(At(y))).Before : CloseIn(x, before, y => double.IsFinite(At(y))).Before);
            }

            if (isComputed)
            {
                samples.Add(x);
            }

            (before, isKnown) = (x, isComputed);
        }

        return [.. samples.Distinct()];
    }

    private bool IsMonotonic(List<double> samples)
    {
        var steps = samples.Zip(samples.Skip(1), (a, b) => Math.Sign(At(b) - At(a))).ToList();
        return steps.TrueForAll(step => step > 0) || steps.TrueForAll(step => step < 0);
    }
}
