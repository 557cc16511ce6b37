using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>
/// The fastest way to do the day: how fast to drive each leg, at which post and how far to charge at each stop, by a dynamic programme over the state of
/// charge. For each place and each step of charge the earliest time is kept; earlier is never worse, so opening times, nights and waits are met exactly. Charge
/// on arrival is rounded down to a step: a plan is never too bold, and more steps only make it better. Times and charges of the answer are computed again
/// without rounding.
/// </summary>
public static class DayPlanner
{
    /// <summary>A hair of charge, for what is met exactly but for rounding.</summary>
    private const double Hair = 1e-12;

    public static DayPlan Plan(PlanRequest request)
    {
        double start = Within(request.StartCharge, 0, 1) + (0 * (Positive(request.Capacity) + Within(request.Reserve, 0, 1) + Within(request.Goal, 0, 1) + Within(request.ChargeStep, 0, 1)));
        int count = request.Legs.Count;
        bool legsKnown = count > 0 && count == request.Stops.Count && request.Legs.All(leg => leg.Any(choice => choice.IsUsable));
        bool timesKnown = request.Stops.All(stop => stop.IsKnown) && request.Hours.All(hours => hours.IsKnown) && (request.Hours.Count == 0 || request.Hours.Count == count);
        if (double.IsNaN(start) || !legsKnown || !timesKnown)
            return new DayPlan(PlanOutcome.NotComputable, [], -1, double.NaN, double.NaN);
        var search = new Search(request);
        search.Start(start);
        for (int leg = 0; leg < count; leg++)
        {
            if (search.Drive(leg) is { } failure)
                return failure;
            search.Stop(leg);
        }

        return search.Finish();
    }

    private sealed class Search
    {
        private readonly PlanRequest _request;
        private readonly int _steps, _stride;
        private readonly Label[][] _arrivals, _departures;

        public Search(PlanRequest request)
        {
            _request = request;
            _steps = Math.Clamp(request.Steps, 10, 5000);
            _stride = Math.Max(1, (int)Math.Round(request.ChargeStep * _steps));
            _arrivals = new Label[request.Legs.Count][];
            _departures = new Label[request.Legs.Count + 1][];
        }

        public void Start(double charge)
        {
            _departures[0] = Empty();
            _departures[0][Down(charge)] = new Label(0, -1, -1);
        }

        public DayPlan? Drive(int leg)
        {
            Label[] from = _departures[leg], to = _arrivals[leg] = Empty();
            IReadOnlyList<LegChoice> choices = _request.Legs[leg];
            DailyWindow hours = HoursOf(leg);
            double least = leg == _request.Legs.Count - 1 ? Math.Max(_request.Reserve, _request.Goal) : _request.Reserve, latest = _request.Stops[leg].ArriveBy;
            double shortest = double.PositiveInfinity, late = double.PositiveInfinity;
            for (int i = 0; i < choices.Count; i++)
            {
                if (!choices[i].IsUsable)
                    continue;
                double capacity = _request.Capacity, reserve = Math.Max(least, choices[i].Reserve);
                double wanted = Math.Max(reserve + (choices[i].Energy / capacity), choices[i].Deepest / capacity), full = choices[i].Arrival(1, capacity);
                for (int step = 0; step <= _steps; step++)
                {
                    double charge = (double)step / _steps;
                    if (!double.IsFinite(from[step].Time))
                        continue;
                    if (charge < wanted - Hair || full < reserve - Hair)
                    {
                        shortest = Math.Min(shortest, Math.Max(wanted - charge, reserve - full));
                        continue;
                    }

                    double time = hours.Start(from[step].Time, choices[i].Time) + choices[i].Time;
                    if (!(time <= latest) || double.IsInfinity(time))
                    {
                        late = Math.Min(late, double.IsInfinity(time) ? choices[i].Time - hours.Length : time - latest);
                        continue;
                    }

                    ref Label label = ref to[Down(choices[i].Arrival(charge, capacity))];
                    if (time < label.Time)
                        label = new Label(time, step, i);
                }
            }

            if (Array.Exists(to, label => double.IsFinite(label.Time)))
                return null;
            return double.IsInfinity(late)
                ? new DayPlan(PlanOutcome.OutOfEnergy, [], leg, shortest * _request.Capacity, double.NaN)
                : new DayPlan(PlanOutcome.OutOfTime, [], leg, double.NaN, late);
        }

        public void Stop(int leg)
        {
            PlanStop stop = _request.Stops[leg];
            Label[] from = _arrivals[leg], to = _departures[leg + 1] = Empty();
            for (int step = 0; step <= _steps; step++)
            {
                if (double.IsFinite(from[step].Time))
                    to[step] = new Label(Math.Max(from[step].Time + stop.Pause, stop.NotBefore), step, -1);
            }

            for (int post = 0; post < stop.Posts.Count && leg < _request.Legs.Count - 1; post++)
            {
                if (stop.Posts[post].Curve.IsComputable)
                    Charge(stop, post, from, to);
            }
        }

        public DayPlan Finish()
        {
            Label[] last = _arrivals[^1];
            int step = 0;
            for (int i = 1; i <= _steps; i++)
            {
                if (last[i].Time <= last[step].Time)
                    step = i;
            }

            int count = _arrivals.Length;
            int[] choices = new int[count], targets = new int[count], posts = new int[count];
            for (int leg = count - 1; leg >= 0; leg--)
            {
                Label arrival = _arrivals[leg][step];
                choices[leg] = arrival.Choice;
                Label departure = _departures[leg][arrival.From];
                if (leg > 0)
                    (targets[leg - 1], posts[leg - 1]) = (arrival.From, departure.Choice);
                step = departure.From;
            }

            posts[count - 1] = -1;
            return Replay(choices, targets, posts);
        }

        private DayPlan Replay(int[] choices, int[] targets, int[] posts)
        {
            var legs = new PlannedLeg[choices.Length];
            double time = 0, charge = _request.StartCharge;
            for (int leg = 0; leg < choices.Length; leg++)
            {
                LegChoice choice = _request.Legs[leg][choices[leg]];
                PlanStop stop = _request.Stops[leg];
                double leave = HoursOf(leg).Start(time, choice.Time), arrive = leave + choice.Time, arrival = choice.Arrival(charge, _request.Capacity);
                double next = Math.Max(arrive + stop.Pause, stop.NotBefore), target = (double)targets[leg] / _steps;
                PlannedCharge? charging = null;
                if (posts[leg] >= 0 && target > arrival)
                {
                    PlanPost post = stop.Posts[posts[leg]];
                    double duration = post.Curve.Time(_request.Capacity, arrival, target), on = stop.Opening.Start(arrive + post.Overhead, duration);
                    charging = new PlannedCharge(posts[leg], on, on + duration);
                    next = Math.Max(next, on + duration);
                }

                double left = charging is null ? arrival : target;
                legs[leg] = new PlannedLeg(choice, leave, arrive, arrival, left, charging);
                (time, charge) = (next, left);
            }

            return new DayPlan(PlanOutcome.Found, legs, -1, double.NaN, double.NaN);
        }

        private void Charge(PlanStop stop, int post, Label[] from, Label[] to)
        {
            // Time to each step from empty; between two steps it is the difference.
            double[] reach = new double[_steps + 1];
            for (int step = 1; step <= _steps; step++)
                reach[step] = reach[step - 1] + stop.Posts[post].Curve.Time(_request.Capacity, (step - 1.0) / _steps, (double)step / _steps);
            for (int step = 0; step < _steps; step++)
            {
                if (!double.IsFinite(from[step].Time))
                    continue;
                double begin = from[step].Time + stop.Posts[post].Overhead, earliest = Math.Max(from[step].Time + stop.Pause, stop.NotBefore);
                for (int target = ((step / _stride) + 1) * _stride; target <= _steps; target += _stride)
                {
                    double duration = reach[target] - reach[step], end = stop.Opening.Start(begin, duration) + duration;
                    // A charge that is never reached is NaN and ends it, as hours that are too short do.
                    if (!double.IsFinite(end))
                        break;
                    double time = Math.Max(end, earliest);
                    if (time < to[target].Time)
                        to[target] = new Label(time, step, post);
                }
            }
        }

        private DailyWindow HoursOf(int leg) => _request.Hours.Count == 0 ? DailyWindow.Always : _request.Hours[leg];

        private Label[] Empty()
        {
            var labels = new Label[_steps + 1];
            Array.Fill(labels, new Label(double.PositiveInfinity, -1, -1));
            return labels;
        }

        private int Down(double charge) => Math.Clamp((int)Math.Floor((charge * _steps) + 1e-9), 0, _steps);
    }

    /// <summary>Earliest time with a charge, where it came from, and how: the choice of the leg, or the post; −1 for no charging.</summary>
    private readonly record struct Label(double Time, int From, int Choice);
}
