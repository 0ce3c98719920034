using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations.Basis;
using Ohmstead.Electronics;

namespace Ohmstead.Assessment.Obligations.Rules;

/// <summary>Somebody has had the board at the bench since the day before which its keeper takes everything as told.</summary>
public sealed class NotMerelyTold : IObligationRule
{
    private const string Name = "not-merely-told";

    // A reason is one line; the rest stands among what is not asked for.
    private const int MostNamed = 5;

    /// <inheritdoc/>
    public string Kind => Name;

    /// <inheritdoc/>
    public string Asks => "somebody has had the board at the bench since the day before which everything is taken as told";

    /// <inheritdoc/>
    public IEnumerable<Obligation> Ask(BoardUnderObligation board)
    {
        if (board.ToldBefore is { } day)
        {
            yield return Open(day, []);
        }
    }

    /// <summary>That a board is merely told, with the places where a fault that was told then is asked for no more.</summary>
    /// <param name="day">The day before which it is taken as told.</param>
    /// <param name="quieted">What stood open and is not asked for.</param>
    public static Obligation Open(DateOnly day, IReadOnlyList<Obligation> quieted)
    {
        var faults = Faults(quieted);
        var standing = faults.Count == 0 ? string.Empty : $"; a fault told then still stands at {Named(faults)}";
        return Obligation.Open(
            Name,
            BoardState.AsTold,
            null,
            $"what was done before {IsoDate.Text(day)} is taken as it was told, and nobody has looked since{standing}",
            "look at it before power is applied; from its first visit on it is judged in full"
        );
    }

    // What is merely not proved yet is no fault.
    private static List<string> Faults(IReadOnlyList<Obligation> quieted) =>
        [
            .. quieted
                .Where(one => one.State is BoardState.FaultStands or BoardState.MakeSafe)
                .Select(one => one.At ?? "the board")
                .Distinct(StringComparer.Ordinal),
        ];

    private static string Named(List<string> places) =>
        places.Count <= MostNamed
            ? string.Join(", ", places)
            : $"{string.Join(", ", places.Take(MostNamed))} and {places.Count - MostNamed} more";

    /// <summary>What is open on a board that is taken as told and does not count there: it is told, and asked for once somebody
    /// looks.</summary>
    public static Obligation Quieted(Obligation open, DateOnly day) =>
        Obligation.DoesNotApply(
            open.Kind,
            open.At,
            LazyText.For(open, one => $"{one.Text}; told before {IsoDate.Text(day)}, asked for at its next visit")
        );
}
