using Ohmstead.Assessment.Boards;
using Ohmstead.Records.Model;

namespace Ohmstead.Report.Pages;

/// <summary>Two photographs of the same place, with work on it between.</summary>
/// <param name="Place">The place that both show.</param>
/// <param name="Earlier">The one from before.</param>
/// <param name="Later">The one from after.</param>
internal sealed record PhotoPair(string Place, DatedPhoto Earlier, DatedPhoto Later);

/// <summary>A photograph with the visit at which it was taken.</summary>
internal sealed record DatedPhoto(BenchVisit Visit, int Order, Photograph Photo, ShownPicture Shown);

/// <summary>
/// Which photographs belong side by side. A record marks none: they do when the words of both name the same place, they are of different visits, and
/// work was done there in the time from the one to the other. Within one visit nobody knows whether the camera or the iron came first.
/// </summary>
internal static class PhotoPairs
{
    /// <summary>The pairs of a board: for each place the earliest and the latest photograph.</summary>
    public static IReadOnlyList<PhotoPair> Of(BoardAssessment board, IReadOnlyList<DatedPhoto> photos) =>
        [
            .. photos
                .Select(photo => (Place: PlaceIn(photo.Photo.Shows.Value, board), Photo: photo))
                .Where(pair => pair.Place is not null)
                .GroupBy(pair => pair.Place!, pair => pair.Photo, StringComparer.Ordinal)
                .Select(place => new PhotoPair(place.Key, place.First(), place.Last()))
                .Where(pair => pair.Earlier.Order < pair.Later.Order && WorkDays(board, pair).Any()),
        ];

    /// <summary>What was done there from the one to the other.</summary>
    public static IEnumerable<string> WorkDays(BoardAssessment board, PhotoPair pair) =>
        board
            .Visits.Skip(pair.Earlier.Order)
            .Take(pair.Later.Order - pair.Earlier.Order + 1)
            .SelectMany(visit =>
                visit
                    .Work.Where(work => work.Did.Value != WorkKind.LeftAlone && (work.Part ?? work.At)?.Value == pair.Place)
                    .Select(work => $"{work.Did.Text} on {visit.Date.Text}")
            );

    // The first word that is the reference of a part.
    private static string? PlaceIn(string words, BoardAssessment board) =>
        words
            .Split([' ', ',', ';', ':', '.', '(', ')', '/'], StringSplitOptions.RemoveEmptyEntries)
            .FirstOrDefault(word => board.Place(word) is not null);
}
