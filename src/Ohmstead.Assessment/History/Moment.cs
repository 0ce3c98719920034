using Ohmstead.Records.Text;

namespace Ohmstead.Assessment.History;

/// <summary>
/// When something happened at the bench, as exactly as a record knows it: at which visit, and there in the order of the file. Within a
/// visit what stands later happened later, so a day's fault, its mending and its proof keep their order; visits of one day keep the order
/// of the file.
/// </summary>
/// <param name="Visit">The place of the visit in time, from 0; -1 for what was before the first.</param>
/// <param name="Line">The line on which it is written.</param>
/// <param name="Column">The column in which it begins.</param>
public readonly record struct Moment(int Visit, int Line, int Column) : IComparable<Moment>
{
    /// <summary>Before the first visit: the board as it came.</summary>
    public static Moment AsItCame { get; } = new(-1, 0, 0);

    /// <summary>The moment of an entry.</summary>
    /// <param name="visit">The place of its visit in time.</param>
    /// <param name="spot">Where it is written.</param>
    public static Moment At(int visit, Spot spot) => new(visit, spot.Line, spot.Column);

    /// <inheritdoc/>
    public int CompareTo(Moment other) => (Visit, Line, Column).CompareTo((other.Visit, other.Line, other.Column));

    /// <summary>Whether one moment was before another.</summary>
    public static bool operator <(Moment left, Moment right) => left.CompareTo(right) < 0;

    /// <summary>Whether one moment was after another.</summary>
    public static bool operator >(Moment left, Moment right) => left.CompareTo(right) > 0;

    /// <summary>Whether one moment was not after another.</summary>
    public static bool operator <=(Moment left, Moment right) => left.CompareTo(right) <= 0;

    /// <summary>Whether one moment was not before another.</summary>
    public static bool operator >=(Moment left, Moment right) => left.CompareTo(right) >= 0;
}
