using System.Reflection;

namespace RigLang.Mechanics.Tests;

/// <summary>
/// Every public function that takes numbers answers any numbers: it throws nothing and no infinity leaves. Functions over spans and functions of functions
/// have tests of their own.
/// </summary>
public sealed class TotalityTests
{
    private static readonly double[] Odd =
        [double.NaN, double.PositiveInfinity, double.NegativeInfinity, 0, -0.0, -1, 1, 0.5, 2.7, 1500, 25, 1e-300, -1e300, 1e308, double.Epsilon, 0.01, 288, 90_000];

    /// <summary>Records that carry their caller's numbers along; what they compute from them is looked at, what they were given is not.</summary>
    private static readonly HashSet<Type> Carriers =
    [
        typeof(RouteSegment), typeof(RoadLoad), typeof(Rolling), typeof(BatteryDrive), typeof(CombustionDrive), typeof(LateralRig), typeof(TrailerLoad), typeof(PointMass), typeof(TowGeometry),
        typeof(AxleLoads), typeof(Wind), typeof(CoastDown), typeof(LegEnergy), typeof(FuelUse), typeof(DynamometerRoadLoad), typeof(TrackStretch), typeof(ElectricDrive), typeof(PowerDrive),
        typeof(VehicleBalance), typeof(Launch), typeof(StraightLine), typeof(CoupledLoads), typeof(CoupledPass), typeof(LegChoice), typeof(Fuel), typeof(LightTrailerClass),
        typeof(SprungAxle), typeof(ArrivalCharge), typeof(LaunchResult), typeof(ChargePoint),
    ];

    public static TheoryData<string> Functions => [.. Methods().Select(Key)];

    [Theory]
    [MemberData(nameof(Functions))]
    public void Any_numbers_get_an_answer(string key)
    {
        MethodInfo method = Methods().First(one => Key(one) == key);
        var random = new Random(key.Length * 7919);
        for (int round = 0; round < 300; round++)
        {
            object? target = method.IsStatic ? null : Make(method.DeclaringType!, random);
            object?[] arguments = [.. method.GetParameters().Select(parameter => Make(parameter.ParameterType, random))];
            object? answer = method.Invoke(target, arguments);
            string call = $"{key} of {target} with {string.Join(", ", arguments)}";
            Look(answer, call);
        }
    }

    private static void Look(object? answer, string call)
    {
        if (answer is double number)
            double.IsInfinity(number).Should().BeFalse("{0} must be NaN where it cannot be computed", call);
        else if (answer is not null && answer.GetType().IsPublic && answer.GetType().Assembly == typeof(Hitch).Assembly && !Carriers.Contains(answer.GetType()) && !answer.GetType().IsEnum)
        {
            foreach (PropertyInfo property in answer.GetType().GetProperties().Where(one => one.PropertyType == typeof(double) && one.GetIndexParameters().Length == 0))
                double.IsInfinity((double)property.GetValue(answer)!).Should().BeFalse("{0} of {1}", property.Name, call);
        }
    }

    private static IEnumerable<MethodInfo> Methods() => typeof(Hitch).Assembly.GetExportedTypes()
        .SelectMany(type => type.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly))
        .Where(method => !method.IsSpecialName && !method.IsAbstract && method.Name is not ("Equals" or "GetHashCode" or "ToString" or "Deconstruct" or "PrintMembers" or "<Clone>$"))
        .Where(method => (method.IsStatic || CanMake(method.DeclaringType!)) && method.GetParameters().All(parameter => CanMake(parameter.ParameterType)));

    private static string Key(MethodInfo method) => $"{method.DeclaringType!.Name}.{method.Name}({string.Join(",", method.GetParameters().Select(one => one.ParameterType.Name))})";

    private static bool CanMake(Type type) =>
        type == typeof(double) || type == typeof(int) || type == typeof(bool) || type.IsEnum || type == typeof(WheelDrive) || type == typeof(EngineMap) || type == typeof(ChargingCurve)
        || (Carriers.Contains(type) && (Widest(type) is { } widest ? widest.GetParameters().All(one => CanMake(one.ParameterType)) : type.GetProperties().All(one => !one.CanWrite || CanMake(one.PropertyType))));

    private static ConstructorInfo? Widest(Type type) => type.GetConstructors().Where(one => one.GetParameters().Length > 0).MaxBy(one => one.GetParameters().Length);

    private static object Make(Type type, Random random)
    {
        if (type == typeof(double))
            return Odd[random.Next(Odd.Length)];
        if (type == typeof(int))
            return new[] { int.MinValue, -1, 0, 1, 2, 98, int.MaxValue }[random.Next(7)];
        if (type == typeof(bool))
            return random.Next(2) == 0;
        if (type.IsEnum)
            return Enum.ToObject(type, random.Next(-1, 8));
        if (type == typeof(EngineMap))
            return EngineMap.Diesel;
        if (type == typeof(ChargingCurve))
            return ChargingCurve.Through([new(0.2, Odd[random.Next(Odd.Length)]), new(0.9, 30e3)]);
        if (type == typeof(WheelDrive))
            return Make(random.Next(2) == 0 ? typeof(ElectricDrive) : typeof(PowerDrive), random);
        if (Widest(type) is { } widest)
            return widest.Invoke([.. widest.GetParameters().Select(one => Make(one.ParameterType, random))]);
        object made = Activator.CreateInstance(type)!;
        foreach (PropertyInfo property in type.GetProperties().Where(one => one.CanWrite))
            property.SetValue(made, Make(property.PropertyType, random));
        return made;
    }
}
