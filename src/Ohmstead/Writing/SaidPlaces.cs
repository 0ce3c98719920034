using Ohmstead.Assessment.Boards;
using Ohmstead.PartsLists;
using Ohmstead.Records.Findings;

namespace Ohmstead.Writing;

/// <summary>The places of a board that are said in one word of the command line: <c>C4</c>, <c>left edge</c>, <c>C1-C8 C11</c>.</summary>
internal static class SaidPlaces
{
    private static readonly char[] Between = [' ', ',', ';'];

    /// <summary>The places, each once, in the order in which they were said; or what is wrong.</summary>
    /// <param name="board">The board.</param>
    /// <param name="said">What was said. What reads like no list of references is one place of that name.</param>
    public static (IReadOnlyList<string> Places, string? Fault) Parse(BoardAssessment board, string said)
    {
        if (board.Place(said) is not null || !IsList(said))
        {
            return ([said], null);
        }

        var (places, fault, next) = ReferenceList.Read(said);
        if (fault is not null)
        {
            return ([], $"{fault}; {next}");
        }

        // One that is not there makes the others doubtful: the person thinks of another board.
        return places.FirstOrDefault(place => board.Place(place) is null) is { } unknown ? ([], Missing(board, unknown))
            : places.CountBy(place => place, StringComparer.Ordinal).FirstOrDefault(pair => pair.Value > 1).Key is { } twice
                ? ([], $"'{twice}' is named twice")
            : (places, null);
    }

    /// <summary>
    /// Why it cannot be told whether a name is a part of the board or another place on it: its design lists the parts, and is not there to
    /// ask. Null where it can be told.
    /// </summary>
    /// <param name="board">The board.</param>
    /// <param name="said">What was said.</param>
    public static string? WhyUnsure(FoundBoard board, string said) =>
        board.Board.Place(said) is null && board.Board.Board.Design is { } design && !board.Workshop.Designs.ContainsKey(design.Value)
            ? $"whether '{said}' is a part of {board.Board.Board.Id.Value} is not known: its design '{design.Value}' was not read; "
                + "nothing was written, and ohmstead check tells why"
            : null;

    /// <summary>That a place reads like a part which is not listed, though others of its letters are: C9 where C1 and C2 are. Null where it
    /// is listed, or is a place such as J1 where no J is.</summary>
    public static string? WhyNoPart(BoardAssessment board, string? said) =>
        said is not null && IsMissing(board, said) ? Missing(board, said) + "; --sure takes it for a place that is not listed" : null;

    private static string Missing(BoardAssessment board, string said) =>
        Nearest.Told($"{board.Board.Id.Value} has no part '{said}'", Nearest.To(said, board.Places.Select(place => place.Part.Ref.Value)));

    private static bool IsMissing(BoardAssessment board, string said)
    {
        var letters = ReferenceList.ClassLetters(said);
        return letters.Length is > 0 and < 4
            && said.Length > letters.Length
            && said.AsSpan(letters.Length).IndexOfAnyExceptInRange('0', '9') < 0
            && board.Place(said) is null
            && board.Places.Any(place => ReferenceList.ClassLetters(place.Part.Ref.Value) == letters);
    }

    // Several references, or one range of them; what is told in words is one place.
    private static bool IsList(string said)
    {
        var pieces = said.Split(Between, StringSplitOptions.RemoveEmptyEntries);
        return Array.TrueForAll(pieces, piece => char.IsAsciiLetter(piece[0]) && char.IsAsciiDigit(piece[^1]))
            && (pieces.Length > 1 || ReferenceList.Read(said).References.Count > 1);
    }
}
