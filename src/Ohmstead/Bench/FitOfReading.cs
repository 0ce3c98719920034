using System.Collections.Immutable;
using Ohmstead.Meters;
using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;
using Ohmstead.Writing;

namespace Ohmstead.Bench;

/// <summary>Whether what a meter shows belongs to the place that was come to.</summary>
internal static class FitOfReading
{
    /// <summary>What of it is taken; or why nothing is.</summary>
    /// <param name="reading">What the meter shows.</param>
    /// <param name="stop">The place.</param>
    /// <param name="kind">The kind of part there; null for a test point.</param>
    public static (IReadOnlyList<(string Key, string Value)> Values, string? Fault) To(MeterReading reading, Stop stop, PartKind? kind)
    {
        string[] wanted = [.. stop.Expected.Select(expected => MeasuredKey.For(expected.Measured).Name)];
        var main = reading.Values[0].Key;
        if (!wanted.Contains(main, StringComparer.Ordinal) && !MayGive(kind, main))
        {
            return (
                [],
                $"{stop.Name} is measured in {string.Join(", ", wanted.Select(Words))}, and the meter shows {Words(main)}; "
                    + "nothing was taken"
            );
        }

        // Beside it goes what a record of the place can hold.
        var shape = kind is null ? BenchShape.Proof : BenchShape.Reading;
        return (
            [
                .. reading.Values.Where(value =>
                    value.Key == main
                    || (
                        shape.PlaceOf(value.Key) >= 0
                        && (IsCondition(value.Key, kind) || wanted.Contains(value.Key, StringComparer.Ordinal) || MayGive(kind, value.Key))
                    )
                ),
            ],
            null
        );
    }

    private static string Words(string key) => key.Replace('_', ' ');

    private static bool IsCondition(string key, PartKind? kind) =>
        key == BenchShape.Range.Name || (key == BenchShape.Frequency.Name && kind is not null && BenchMemory.HasFrequency(kind));

    // A resistance across a capacitor is no ESR, and a voltage on a part that hangs in no circuit says nothing.
    private static bool MayGive(PartKind? kind, string key) =>
        kind?.Family is PartFamily.Capacitor && (key == BenchShape.Esr.Name || key == BenchShape.LossFactor.Name)
        || (kind?.Family is PartFamily.Inductor && key == BenchShape.Resistance.Name);
}
