namespace RigLang.Mechanics;

/// <summary>
/// The shortest line through a tube of given half-width around heights, its ends held. Two chains start at the last bend: the lowest line along the roof and
/// the highest along the floor. When a new piece of roof drops below the floor chain (or the reverse), the string bends there. Each point enters and
/// leaves a chain once, so the work grows with the number of points alone.
/// </summary>
internal ref struct TautString
{
    private readonly ReadOnlySpan<double> _x;
    private readonly Span<double> _heights;
    private readonly double[] _centre;
    private readonly double _band;
    private readonly Chain _roof, _floor;
    private int _bend;
    private double _bendHeight;

    public TautString(ReadOnlySpan<double> x, Span<double> heights, double band)
    {
        _x = x;
        _heights = heights;
        _centre = heights.ToArray();
        _band = band;
        _roof = new Chain(heights.Length);
        _floor = new Chain(heights.Length);
    }

    /// <summary>Replaces the heights by the string.</summary>
    public void Draw()
    {
        int count = _heights.Length;
        if (count < 3 || _band == 0)
            return;
        _bendHeight = _centre[0];
        for (int i = 1; i < count; i++)
        {
            // Points at one place cannot bend a line apart: only the first of them counts.
            if (i < count - 1 && _x[i] <= _x[i - 1])
                continue;
            Add(i, _roof, _floor, 1);
            Add(i, _floor, _roof, -1);
        }

        BendAt(count - 1, _centre[count - 1]);
    }

    private readonly double Edge(int i, double side) => i == 0 || i == _centre.Length - 1 ? _centre[i] : _centre[i] + (side * _band);

    private readonly double Slope(int from, double fromHeight, int to, double toHeight)
    {
        double run = _x[to] - _x[from];
        return run > 0 ? (toHeight - fromHeight) / run : 0;
    }

    /// <summary>Adds a point to its own chain; <paramref name="side"/> is 1 for the roof, −1 for the floor.</summary>
    private void Add(int i, Chain own, Chain other, double side)
    {
        double height = Edge(i, side);
        while (own.Count > 0)
        {
            (int before, double beforeHeight) = own.Count > 1 ? (own[own.Count - 2], Edge(own[own.Count - 2], side)) : (_bend, _bendHeight);
            double chainSlope = Slope(before, beforeHeight, own[own.Count - 1], Edge(own[own.Count - 1], side));
            if (side * (chainSlope - Slope(before, beforeHeight, i, height)) < 0)
                break;
            own.RemoveLast();
        }

        while (own.Count == 0 && other.Count > 0 && other[0] < i)
        {
            double otherHeight = Edge(other[0], -side);
            if (side * (Slope(_bend, _bendHeight, other[0], otherHeight) - Slope(_bend, _bendHeight, i, height)) <= 0)
                break;
            BendAt(other.RemoveFirst(), otherHeight);
        }

        own.Add(i);
    }

    private void BendAt(int i, double height)
    {
        double slope = Slope(_bend, _bendHeight, i, height);
        for (int k = _bend; k <= i; k++)
            _heights[k] = _bendHeight + (slope * (_x[k] - _x[_bend]));
        _heights[i] = height;
        (_bend, _bendHeight) = (i, height);
    }

    /// <summary>Point numbers, added at the end and taken from both ends.</summary>
    private sealed class Chain(int capacity)
    {
        private readonly int[] _items = new int[capacity];
        private int _start, _end;

        public int Count => _end - _start;

        public int this[int i] => _items[_start + i];

        public void Add(int item) => _items[_end++] = item;

        public void RemoveLast() => _end--;

        public int RemoveFirst() => _items[_start++];
    }
}
