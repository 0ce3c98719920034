using Ohmstead.Assessment.Obligations;
using Ohmstead.Assessment.Obligations.Basis;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Publishing.Tables;

/// <summary>The kinds of obligation: what each asks is told here once.</summary>
internal static class KindsTable
{
    /// <summary>Its columns.</summary>
    public static DataColumns<IObligationRule> Columns { get; } =
        new(
            "kind row",
            "One kind of what must be shown before a board may be switched on.",
            "{ kind: place-filled, asks: a part sits in every place, met: a part sits there }",
            new(Key.Id("kind", "Its name.", "place-filled").Needed(), rule => rule.Kind),
            new(Key.Text("asks", "What must be shown.", "a part sits in every place").Needed(), rule => rule.Asks),
            new(
                Key.Text("met", "What a met one of it says that has no text of its own; absent where each has.", "a part sits there"),
                rule => rule.AsMet
            )
        );

    /// <summary>The kinds, in the order in which they are told.</summary>
    public static IEnumerable<IObligationRule> Rows() => ObligationCatalogue.All;
}
