using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>
/// The fastest way to do the day: how fast to drive each leg and how far to charge at each stop, by a dynamic programme over the state of charge. For each
/// place and each step of charge the
/// earliest time is kept; earlier is never worse, so opening times and waits are met exactly. Charge on arrival is rounded down to a step: a plan is
/// never too bold, and more steps only make it better. Times and charges of the answer are computed again without rounding.
/// </summary>
public static class DayPlanner
{
    public static DayPlan Plan(PlanRequest request)
    {
        var none = new DayPlan(PlanOutcome.NotComputable, [], -1, double.NaN);
        double start = Within(request.StartCharge, 0, 1) + (0 * (Positive(request.Capacity) + Within(request.Reserve, 0, 1) + Within(request.Goal, 0, 1)));
        bool stopsKnown = request.Stops.All(stop => !double.IsNaN(NotNegative(stop.Overhead) + NotNegative(stop.Pause))
            && !double.IsNaN(stop.NotBefore) && !double.IsNaN(stop.Opens) && !double.IsNaN(stop.Closes) && !double.IsNaN(stop.ArriveBy));
        bool legsKnown = request.Legs.Count > 0 && request.Legs.Count == request.Stops.Count && request.Legs.All(leg => leg.Any(IsUsable));
        if (double.IsNaN(start) || !stopsKnown || !legsKnown)
            return none;
        var search = new Search(request);
        search.Start(start);
        for (int leg = 0; leg < request.Legs.Count; leg++)
        {
            if (search.Drive(leg) is { } failure)
                return failure;
            search.Stop(leg);
        }

        return search.Finish();
    }

    internal static bool IsUsable(LegChoice choice) => choice.Time > 0 && double.IsFinite(choice.Time) && double.IsFinite(choice.Energy);

    private sealed class Search
    {
        private readonly PlanRequest _request;
        private readonly int _steps;
        private readonly Label[][] _arrivals, _departures;

        public Search(PlanRequest request)
        {
            _request = request;
            _steps = Math.Clamp(request.Steps, 10, 5000);
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
            double least = leg == _request.Legs.Count - 1 ? Math.Max(_request.Reserve, _request.Goal) : _request.Reserve, latest = _request.Stops[leg].ArriveBy;
            double most = double.NegativeInfinity;
            for (int step = 0; step <= _steps; step++)
            {
                if (!double.IsFinite(from[step].Time))
                    continue;
                for (int i = 0; i < choices.Count; i++)
                {
                    double charge = Math.Min(1, ((double)step / _steps) - (choices[i].Energy / _request.Capacity));
                    if (!IsUsable(choices[i]))
                        continue;
                    most = Math.Max(most, charge);
                    double time = from[step].Time + choices[i].Time;
                    if (charge < least - 1e-12 || time > latest)
                        continue;
                    ref Label label = ref to[Down(charge)];
                    if (time < label.Time)
                        label = new Label(time, step, i);
                }
            }

            if (Array.Exists(to, label => double.IsFinite(label.Time)))
                return null;
            return most < least - 1e-12
                ? new DayPlan(PlanOutcome.OutOfEnergy, [], leg, (least - most) * _request.Capacity)
                : new DayPlan(PlanOutcome.OutOfTime, [], leg, double.NaN);
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

            if (stop.Charger is { IsComputable: true } curve && leg < _request.Legs.Count - 1)
                Charge(stop, curve, from, to);
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

            var choices = new int[_arrivals.Length];
            var targets = new int[_arrivals.Length];
            for (int leg = _arrivals.Length - 1; leg >= 0; leg--)
            {
                Label arrival = _arrivals[leg][step];
                choices[leg] = arrival.Choice;
                Label departure = _departures[leg][arrival.From];
                if (leg > 0)
                    targets[leg - 1] = departure.From == arrival.From ? -1 : arrival.From;
                step = departure.From;
            }

            return Replay(choices, targets);
        }

        private DayPlan Replay(int[] choices, int[] targets)
        {
            var legs = new PlannedLeg[choices.Length];
            double time = 0, charge = _request.StartCharge;
            for (int leg = 0; leg < choices.Length; leg++)
            {
                LegChoice choice = _request.Legs[leg][choices[leg]];
                PlanStop stop = _request.Stops[leg];
                double arrive = time + choice.Time, arrival = Math.Min(1, charge - (choice.Energy / _request.Capacity));
                double target = leg < choices.Length - 1 && targets[leg] > 0 ? (double)targets[leg] / _steps : -1;
                double leave = Math.Max(arrive + stop.Pause, stop.NotBefore);
                double left = Math.Max(arrival, target);
                if (target > arrival)
                    leave = Math.Max(leave, Math.Max(arrive + stop.Overhead, stop.Opens) + stop.Charger!.Time(_request.Capacity, arrival, target));
                legs[leg] = new PlannedLeg(choice, time, arrive, arrival, left);
                (time, charge) = (leave, left);
            }

            return new DayPlan(PlanOutcome.Found, legs, -1, double.NaN);
        }

        private void Charge(PlanStop stop, ChargingCurve curve, Label[] from, Label[] to)
        {
            // Time to each step from empty; between two steps it is the difference.
            double[] reach = new double[_steps + 1];
            for (int step = 1; step <= _steps; step++)
                reach[step] = reach[step - 1] + curve.Time(_request.Capacity, (step - 1.0) / _steps, (double)step / _steps);
            for (int step = 0; step < _steps; step++)
            {
                if (!double.IsFinite(from[step].Time))
                    continue;
                double begin = Math.Max(from[step].Time + stop.Overhead, stop.Opens), earliest = Math.Max(from[step].Time + stop.Pause, stop.NotBefore);
                for (int target = step + 1; target <= _steps; target++)
                {
                    double end = begin + reach[target] - reach[step];
                    // A charge that is never reached is NaN and ends it as a closing charger does.
                    if (!(end <= stop.Closes))
                        break;
                    double time = Math.Max(end, earliest);
                    if (time < to[target].Time)
                        to[target] = new Label(time, step, -1);
                }
            }
        }

        private Label[] Empty()
        {
            var labels = new Label[_steps + 1];
            Array.Fill(labels, new Label(double.PositiveInfinity, -1, -1));
            return labels;
        }

        private int Down(double charge) => Math.Clamp((int)Math.Floor((charge * _steps) + 1e-9), 0, _steps);
    }

    /// <summary>Earliest time with a charge, where it came from, and how.</summary>
    private readonly record struct Label(double Time, int From, int Choice);
}
