using System.Text;

namespace RigLang.Quantities;

/// <summary>Puts units together: "N·m·s/rad", "kg*m2", "lbf/mph²", "kWh/100km". Left to right; behind a stroke only strokes.</summary>
internal static class UnitComposer
{
    public const int MostLength = 48;
    private const int MostFactors = 8;

    /// <summary>The unit, or null if a part is unknown or the form is wrong.</summary>
    public static Unit? Compose(ReadOnlySpan<char> text)
    {
        // The one product that everybody writes without a sign between.
        if (text is "Nm")
            return Compose("N·m");
        if (text is "kNm")
            return Compose("kN·m");

        var build = new Build();
        var below = false;
        var factors = 0;
        while (true)
        {
            var end = IndexOfSeparator(text);
            var factor = end < 0 ? text : text[..end];
            if (++factors > MostFactors || !build.Add(factor, below))
                return null;
            if (end < 0)
                return factors == 1 && !build.HasPower ? null : build.Finish();

            var stroke = text[end] == '/';
            if (below && !stroke)
                return null; // kg/m·s: nobody can say what is below the line
            below = stroke;
            build.Join(stroke);
            text = text[(end + 1)..];
        }
    }

    /// <summary>Where the next sign between factors stands, or -1. U+22C5 is what some keyboards give for the dot.</summary>
    public static int IndexOfSeparator(ReadOnlySpan<char> text)
    {
        for (var at = 0; at < text.Length; at++)
        {
            if (text[at] is '·' or '*' or '/' or '⋅')
                return at;
        }

        return -1;
    }

    /// <summary>Splits "ft²" into "ft" and 2; a power of one where none is written.</summary>
    public static (int Length, int Power) SplitPower(ReadOnlySpan<char> factor)
    {
        if (factor.IsEmpty)
            return (0, 1);
        var power = factor[^1] switch { '²' or '2' => 2, '³' or '3' => 3, _ => 1 };
        if (power == 1)
            return (factor.Length, 1);
        var length = factor.Length - 1;
        if (length > 1 && factor[^1] is '2' or '3' && factor[length - 1] == '^')
            length--;
        return (length, power);
    }

    private struct Build()
    {
        private readonly StringBuilder _symbol = new();
        private Dimension _dimension;
        private double _over = 1;
        private double _under = 1;
        private string? _currency;
        private bool _customary;
        private int _energyOver, _forceOver, _powerOver, _volumeOver, _lengthOver, _timeOver, _energyUnder, _volumeUnder, _lengthUnder, _others;

        public bool HasPower { get; private set; }

        public readonly void Join(bool stroke) => _symbol.Append(stroke ? '/' : '·');

        public bool Add(ReadOnlySpan<char> factor, bool below)
        {
            var hundred = below && factor is "100km" or "100mi";
            if (hundred)
                factor = factor[3..];
            var (length, power) = SplitPower(factor);
            if (UnitTable.FindSimple(factor[..length]) is not { IsLinear: true } unit || unit.Dimension.IsNone)
                return false;
            if (unit.Currency is not null && (_currency is not null || power > 1))
                return false;

            HasPower |= power > 1;
            _currency ??= unit.Currency;
            _customary |= unit.IsCustomary;
            _dimension *= unit.Dimension.Pow(below ? -power : power);
            var size = Math.Pow(unit.Factor, power) * (hundred ? 100 : 1);
            if (below)
                _under *= size;
            else
                _over *= size;
            Count(unit, power, below);
            _symbol.Append(hundred ? "100" : "").Append(unit.Symbol).Append(power switch { 2 => "²", 3 => "³", _ => "" });
            return true;
        }

        // Which of several meanings a dimension has is told by what the unit was made of.
        private void Count(Unit unit, int power, bool below)
        {
            var dimension = unit.Dimension.Pow(power);
            if (unit.Family == UnitFamily.Energy)
                _ = below ? _energyUnder++ : _energyOver++;
            else if (dimension == Dimension.Volume)
                _ = below ? _volumeUnder++ : _volumeOver++;
            else if (dimension == Dimension.Length)
                _ = below ? _lengthUnder++ : _lengthOver++;
            else if (dimension == Dimension.Force && !below)
                _forceOver++;
            else if (dimension == Dimension.Power && !below)
                _powerOver++;
            else if (dimension == Dimension.Time && !below)
                _timeOver++;
            else
                _others++;
        }

        public readonly Unit? Finish()
        {
            var symbol = _symbol.ToString();
            var factor = _over / _under;
            if (!double.IsFinite(factor) || factor <= 0)
                return null;
            var electric = _energyOver == 1 || (_powerOver == 1 && _timeOver == 1);
            if (_dimension == Dimension.Energy.Pow(-1) * Dimension.Length && _energyUnder == 1 && _lengthOver == 1 && _others == 0)
                return Reciprocal(symbol, Dimension.Force, UnitFamily.EnergyPerDistance);
            if (_dimension == Dimension.Area.Pow(-1) && _volumeUnder == 1 && _lengthOver == 1 && _others == 0)
                return Reciprocal(symbol, Dimension.Area, UnitFamily.FuelPerDistance);

            var family = UnitFamily.Plain;
            if (_dimension == Dimension.Energy)
                family = electric ? UnitFamily.Energy : _forceOver == 1 && _lengthOver == 1 ? UnitFamily.Torque : UnitFamily.Plain;
            else if (_dimension == Dimension.Force && electric)
                family = UnitFamily.EnergyPerDistance;
            else if (_dimension == Dimension.Area && _volumeOver == 1 && _lengthUnder == 1)
                family = UnitFamily.FuelPerDistance;
            return new Unit(symbol, symbol, _dimension, factor, family) { Currency = _currency, IsCustomary = _customary };
        }

        // km/L and mi/kWh: SI = Factor ÷ number, so the factor is what one of them comes to, turned over.
        private readonly Unit Reciprocal(string symbol, Dimension dimension, UnitFamily family) =>
            new(symbol, symbol, dimension, _under / _over, family) { IsReciprocal = true, IsCustomary = _customary };
    }
}
