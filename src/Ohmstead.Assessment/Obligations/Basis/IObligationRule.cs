using Ohmstead.Assessment.History;

namespace Ohmstead.Assessment.Obligations.Basis;

/// <summary>
/// One kind of obligation: which of them a record creates, and what in it meets each. A rule holds no state and reads its argument alone.
/// Where the record is silent, an obligation is open.
/// </summary>
public interface IObligationRule
{
    /// <summary>The name of the kind, in small letters with hyphens.</summary>
    string Kind { get; }

    /// <summary>One line: what must be shown.</summary>
    string Asks { get; }

    /// <summary>The obligations of a board, in order of its lists.</summary>
    IEnumerable<Obligation> Ask(BoardUnderObligation board);
}
