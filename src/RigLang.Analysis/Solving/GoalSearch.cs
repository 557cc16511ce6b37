using RigLang.Mechanics;
using RigLang.Quantities;

namespace RigLang.Analysis.Solving;

/// <summary>
/// Looks for the values of one number for which a function of it meets a wish. The range is sampled evenly, finer about the places where the function turns, is level
/// or has gaps; each change of sign, and each turn that may come near the wish, is closed in on by Brent's methods. No place within the range is looked at twice.
/// </summary>
internal sealed class GoalSearch
{
    private const int Coarse = 12;
    private const int Finer = 5;
    private const int MostWhole = 200;
    private const int Halvings = 32;
    private const double Even = 1e-9;

    private readonly Func<double, double> function;
    private readonly double low;
    private readonly double high;
    private readonly bool isWhole;
    private readonly Dictionary<double, double> known = [];

    /// <summary>Ascending; those that can't be computed too, as they part what lies on both sides.</summary>
    private readonly List<double> places = [];

    /// <param name="function">NaN where it can't be computed.</param>
    /// <param name="low">Lower end.</param>
    /// <param name="high">Upper end, above the lower.</param>
    /// <param name="isWhole">Only whole numbers count.</param>
    public GoalSearch(Func<double, double> function, double low, double high, bool isWhole)
    {
        (this.function, this.low, this.high, this.isWhole) = (function, low, high, isWhole);
        if (isWhole)
        {
            SampleWhole();
        }
        else
        {
            SampleEvenly();
        }

        Samples = [.. places.Where(IsComputed)];
    }

    /// <summary>Where it was looked at, ascending, those that can't be computed left out.</summary>
    public List<double> Samples { get; }

    /// <summary>How many places were looked at.</summary>
    public int Looks => known.Count;

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
            var closer = Extremum.CloseIn(x => -score(x), Samples[Math.Max(0, index - 1)], best, Samples[Math.Min(Samples.Count - 1, index + 1)], -score(best));
            if (-closer.Value > score(best) + even)
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
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (before + behind) / 2;
            (before, behind) = isBefore(middle) ? (middle, behind) : (before, middle);
        }

        return (before, behind);
    }

    /// <summary>Neighbours with nothing between them that can't be computed.</summary>
    private IEnumerable<(double First, double Second)> Pairs() => places.Zip(places.Skip(1)).Where(pair => IsComputed(pair.First) && IsComputed(pair.Second));

    private bool IsComputed(double x) => double.IsFinite(At(x));

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
            // A turn goes on beyond the middle one by far less than the two others lie above it; without this each turn far from the wish would be closed in on.
            if (sign == 0 || Off(b) > 2 * (Off(a) + Off(c) - (2 * Off(b))) || !(Off(a) > 0) || !(Off(c) > 0) || !(Off(b) <= Off(a)) || !(Off(b) <= Off(c)) || (Off(b) == Off(a) && Off(b) == Off(c)))
            {
                continue;
            }

            var turn = Extremum.CloseIn(Off, a, b, c, Off(b));
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

    private void SampleWhole()
    {
        var (first, last) = (Math.Ceiling(low), Math.Floor(high));
        var step = Math.Max(1, Math.Ceiling((last - first) / MostWhole));
        for (var x = first; x <= last; x += step)
        {
            places.Add(x);
        }
    }

    private void SampleEvenly()
    {
        for (var i = 0; i <= Coarse; i++)
        {
            places.Add(i == Coarse ? high : low + ((high - low) * i / Coarse));
        }

        // A function that only rises or only falls hides nothing between its samples; nor does it far from where it turns.
        var fine = places.Take(Coarse).Where((_, index) => IsUneven(index) || IsUneven(index + 1)).ToList();
        foreach (var from in fine)
        {
            places.AddRange(Enumerable.Range(1, Finer - 1).Select(part => from + ((high - low) * part / (Coarse * Finer))));
        }

        places.Sort();
        // The last place where it is still computed counts as a sample: what lies beyond is nobody's.
        places.AddRange([.. from pair in places.Zip(places.Skip(1))
                            where IsComputed(pair.First) != IsComputed(pair.Second)
                            let ends = IsComputed(pair.First) ? pair : (pair.Second, pair.First)
                            select CloseIn(ends.Item1, ends.Item2, IsComputed).Before]);
        places.Sort();
        var distinct = places.Distinct().ToList();
        places.Clear();
        places.AddRange(distinct);
    }

    /// <summary>Whether the function doesn't go on from the sample as it came to it.</summary>
    private bool IsUneven(int index)
    {
        if (index == 0 || index == Coarse)
        {
            return !IsComputed(places[index]);
        }

        var (before, behind) = (At(places[index]) - At(places[index - 1]), At(places[index + 1]) - At(places[index]));
        return !(before * behind > 0);
    }
}
