using System.Runtime.CompilerServices;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.History;

/// <summary>What a part is that sits in a place: its own marks, and what the circuit needs there.</summary>
/// <remarks>
/// A lot goes to the same place of many boards, and each is read many times: the same two give the same values again, whose limits are
/// found at once then. Used by one thread at a time.
/// </remarks>
internal sealed class FittedValues
{
    // A collection of some thousand boards has some hundred pairs; parts that only one board has must not pile up.
    private const int Most = 1_024;

    private readonly Dictionary<Pair, PartValues> known = [];

    /// <summary>The values of a part in a place.</summary>
    /// <param name="part">What the part is.</param>
    /// <param name="place">What belongs there, or null when that is not known.</param>
    internal PartValues Combine(PartValues part, PartValues? place)
    {
        if (place is null)
        {
            return part;
        }

        if (!known.TryGetValue(new(part, place), out var values))
        {
            if (known.Count == Most)
            {
                known.Clear();
            }

            known[new(part, place)] = values = Put(part, place);
        }

        return values;
    }

    // A lot says what the part is; the place says what the circuit needs of it.
    private static PartValues Put(PartValues part, PartValues place) =>
        part with
        {
            Low = place.Low,
            High = place.High,
            EsrLow = place.EsrLow,
            EsrLimit = place.EsrLimit ?? part.EsrLimit,
            WorkingVoltage = place.WorkingVoltage,
            Role = place.Role,
        };

    private readonly struct Pair(PartValues part, PartValues place) : IEquatable<Pair>
    {
        private readonly PartValues part = part;
        private readonly PartValues place = place;

        public bool Equals(Pair other) => ReferenceEquals(part, other.part) && ReferenceEquals(place, other.place);

        public override bool Equals(object? obj) => obj is Pair other && Equals(other);

        public override int GetHashCode() => HashCode.Combine(RuntimeHelpers.GetHashCode(part), RuntimeHelpers.GetHashCode(place));
    }
}
