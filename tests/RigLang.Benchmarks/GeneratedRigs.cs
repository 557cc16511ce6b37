using System.Text;

namespace RigLang.Benchmarks;

/// <summary>Files of any length that look like what people write: a vehicle, a trailer, a load and a rig at a time, each with other figures.</summary>
internal static class GeneratedRigs
{
    /// <summary>A file of at least so many lines.</summary>
    public static string Text(int lines)
    {
        var text = new StringBuilder();
        for (var number = 0; Count(text) < lines; number++)
        {
            text.Append(Set(number));
        }

        return text.ToString();
    }

    /// <summary>A line in the middle of the file whose value a test may edit: the index of a <c>wheelbase</c> line.</summary>
    public static int MiddleWheelbase(string text)
    {
        var lines = text.Split('\n');
        return Enumerable.Range(0, lines.Length).Where(index => lines[index].Contains("wheelbase", StringComparison.Ordinal)).MinBy(index => Math.Abs(index - (lines.Length / 2)));
    }

    private static int Count(StringBuilder text)
    {
        var count = 0;
        foreach (var chunk in text.GetChunks())
        {
            count += chunk.Span.Count('\n');
        }

        return count;
    }

    private static string Set(int number) => $"""
        vehicle van-{number} "People carrier {number}"
            wheelbase               2.{80 + (number % 20)} m
            overhang                1.09 m
            ball-height             0.41 m
            body                    mpv
            width                   1.93 m
            height                  1.82 m
            drive                   front
            gross-rating            {2900 + number % 90} kg
            combined-rating         5000 kg
            towing-rating           2300 kg
            tongue-rating           150 kg
            axle front
                carries             1195 kg ± 10 kg
                axle-rating         1350 kg
                tyres               245/55R19 107W XL
                pressure            270 kPa
                ride-rate           46 N/mm
            axle rear
                carries             1225 kg ± 10 kg     # weighed with the driver
                axle-rating         1720 kg
                tyres               245/55R19 107W XL
                pressure            290 kPa
                ride-rate           58 N/mm
            aboard
                item driver         84 kg at 1.42 m behind front-axle

        trailer box-{number}
            mass                    {1400 + number % 300} kg ± 15 kg
            tongue                  110 kg ± 4 kg
            coupling-to-axle        5.10 m
            coupling-height         0.40 m
            length                  7.2 m
            width                   2.30 m
            height                  2.60 m
            body                    box
            gross-rating            1900 kg
            tongue-rating           150 kg
            coupling                50 mm
            brakes                  overrun
            axle only
                axle-rating         1900 kg
                tyres               195/70R15C 104/102R
                pressure            400 kPa
                rated-pressure      450 kPa
            aboard nothing

        load holiday-{number}
            on vehicle
                item driver         84 kg at 1.42 m behind front-axle
                item children       35 kg + 30 kg at 2.35 m behind front-axle
            on trailer
                item stores         90 kg at 0.60 m ahead of axle

        rig pair-{number} "Number {number}"
            vehicle                 van-{number}
            trailer                 box-{number}
            load                    holiday-{number}
            practice                common-eu
            speed                   85 km/h
            expect rear-axle-load   < 1720 kg


        """;
}
