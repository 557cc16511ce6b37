namespace RigLang.Quantities;

/// <summary>The active currency codes of ISO 4217 (list one, without metals, test codes and units of account), each a unit of money. Nothing is ever converted.</summary>
public static class Currencies
{
    // Croatia, Sierra Leone's old leone, the Cuban convertible peso, the Antillean guilder (now XCG), the Zimbabwe dollar (now ZWG) and,
    // since the euro came in 2026, the Bulgarian lev are no longer active.
    private const string Active =
        "AED AFN ALL AMD AOA ARS AUD AWG AZN BAM BBD BDT BHD BIF BMD BND BOB BOV BRL BSD BTN BWP BYN BZD CAD CDF CHE CHF CHW CLF CLP CNY COP COU " +
        "CRC CUP CVE CZK DJF DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GNF GTQ GYD HKD HNL HTG HUF IDR ILS INR IQD IRR ISK JMD JOD " +
        "JPY KES KGS KHR KMF KPW KRW KWD KYD KZT LAK LBP LKR LRD LSL LYD MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN MXV MYR MZN NAD NGN NIO " +
        "NOK NPR NZD OMR PAB PEN PGK PHP PKR PLN PYG QAR RON RSD RUB RWF SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD SSP STN SVC SYP SZL THB TJS TMT " +
        "TND TOP TRY TTD TWD TZS UAH UGX USD USN UYI UYU UYW UZS VED VES VND VUV WST XAF XCD XCG XOF XPF YER ZAR ZMW ZWG";

    private const string WithoutMinor = "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF";
    private const string InThousandths = "BHD IQD JOD KWD LYD OMR TND";
    private const string InTenThousandths = "CLF UYW";

    private static readonly Dictionary<string, Unit> ByCode =
        Active.Split(' ').Append("XXX").ToDictionary(code => code, code => new Unit(code, code, Dimension.Money, 1) { Currency = code }, StringComparer.Ordinal);

    /// <summary>XXX, the standard's code for "no currency": the unit of money whose currency is not known. Read, never offered.</summary>
    public static Unit Unknown { get; } = ByCode["XXX"];

    /// <summary>The active codes in alphabetical order.</summary>
    public static IReadOnlyList<string> Codes { get; } = Active.Split(' ');

    /// <summary>The unit of money with this code, or null.</summary>
    public static Unit? Find(string code) => ByCode.GetValueOrDefault(code);

    internal static Unit? Find(ReadOnlySpan<char> code) =>
        code.Length == 3 && ByCode.GetAlternateLookup<ReadOnlySpan<char>>().TryGetValue(code, out var unit) ? unit : null;

    /// <summary>Digits behind the point in an amount of this currency: 2 for most, 0 for JPY, 3 for KWD.</summary>
    public static int MinorDigits(string code) =>
        WithoutMinor.Contains(code, StringComparison.Ordinal) ? 0
        : InThousandths.Contains(code, StringComparison.Ordinal) ? 3
        : InTenThousandths.Contains(code, StringComparison.Ordinal) ? 4
        : 2;
}
