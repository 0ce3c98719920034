using Ohmstead.Assessment.Boards;
using Ohmstead.Records.Model;
using Ohmstead.Report.Frame;

namespace Ohmstead.Report.Pages;

/// <summary>Two photographs of the same place, with work on it between.</summary>
/// <param name="Place">The place that both show.</param>
/// <param name="Earlier">The one from before.</param>
/// <param name="Later">The one from after.</param>
/// <param name="Work">What was done there from the one to the other, with its days.</param>
internal sealed record PhotoPair(string Place, DatedPhoto Earlier, DatedPhoto Later, IReadOnlyList<string> Work);

/// <summary>A photograph with the visit at which it was taken.</summary>
internal sealed record DatedPhoto(BenchVisit Visit, int Order, Photograph Photo, ShownPicture Shown);

/// <summary>
/// Which photographs belong side by side. A record marks none: they do when the words of both name the same place, they are of different
/// visits, and work was done there in the time from the one to the other. Within one visit nobody knows whether the camera or the iron came
/// first.
/// </summary>
internal static class PhotoPairs
{
    /// <summary>The pairs of a board: for each place the earliest and the latest photograph.</summary>
    public static IReadOnlyList<PhotoPair> Find(BoardAssessment board, IReadOnlyList<DatedPhoto> photos)
    {
        if (photos.Count < 2)
        {
            return [];
        }

        var work = WorkByPlace(board);
        return
        [
            .. photos
                .Select(photo => (Place: PlaceIn(photo.Photo.Shows.Value, board), Photo: photo))
                .Where(pair => pair.Place is not null)
                .GroupBy(pair => pair.Place!, pair => pair.Photo, StringComparer.Ordinal)
                .Select(place => Pair(place.Key, place.First(), place.Last(), work[place.Key]))
                .Where(pair => pair.Earlier.Order < pair.Later.Order && pair.Work.Count > 0),
        ];
    }

    private static PhotoPair Pair(string place, DatedPhoto earlier, DatedPhoto later, IEnumerable<(int Order, string Words)> work) =>
        new(place, earlier, later, [.. work.Where(one => one.Order >= earlier.Order && one.Order <= later.Order).Select(one => one.Words)]);

    // In order of time.
    private static ILookup<string, (int Order, string Words)> WorkByPlace(BoardAssessment board) =>
        board
            .Visits.Index()
            .SelectMany(visit =>
                visit
                    .Item.Work.Where(work => work.Did.Value != WorkKind.LeftAlone)
                    .Select(work =>
                        (Place: (work.Part ?? work.At)?.Value, Done: (visit.Index, $"{work.Did.Text} on {visit.Item.Date.Text}"))
                    )
            )
            .Where(work => work.Place is not null)
            .ToLookup(work => work.Place!, work => work.Done, StringComparer.Ordinal);

    // The first word that is the reference of a part.
    private static string? PlaceIn(string words, BoardAssessment board) =>
        words
            .Split([' ', ',', ';', ':', '.', '(', ')', '/'], StringSplitOptions.RemoveEmptyEntries)
            .FirstOrDefault(word => board.Place(word) is not null);
}
