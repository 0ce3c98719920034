using Ohmstead.Report.Addresses;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Tables;

namespace Ohmstead.Report.Pages;

/// <summary>The photographs of a board: those of a place before and after its work side by side, then all others in order of
/// time.</summary>
/// <param name="page">The board on its page.</param>
internal sealed class Photographs(BoardOnPage page)
{
    private readonly HtmlWriter html = page.Html;
    private readonly DatedPhoto[] photos = Shown(page);
    private readonly IReadOnlyList<PhotoPair> pairs = PhotoPairs.Find(page.Board, Shown(page));

    // What is side by side stays there; of the others the latest stands in the head of the page.
    private DatedPhoto[] Others => [.. photos.Except(pairs.SelectMany(pair => new[] { pair.Earlier, pair.Later }))];

    /// <summary>Whether there are photographs besides the one in the head.</summary>
    public bool HasMore => pairs.Count > 0 || photos.Length > 1;

    /// <summary>Writes the latest photograph, one that is no half of a pair where there is one; nothing when there is none.</summary>
    public void Head()
    {
        if ((Others.LastOrDefault() ?? photos.LastOrDefault()) is { } latest)
        {
            One(latest);
        }
    }

    /// <summary>Writes the section; nothing when there is no other photograph that can be shown.</summary>
    public void Write()
    {
        if (!HasMore)
        {
            return;
        }

        using var section = Section.Open(html, "photographs", "Photographs");
        foreach (var pair in pairs)
        {
            html.Open(Tag.H3).Text($"{pair.Place}, {pair.Earlier.Visit.Date.Text} beside {pair.Later.Visit.Date.Text}");
            html.Open(Tag.P, ClassName.Fine).Text($"Work there from the one to the other: {string.Join(", ", pair.Work)}.");
            using var beside = html.Open(Tag.Div, ClassName.Pair);
            One(pair.Earlier);
            One(pair.Later);
        }

        if (Others is not [_, .., _] others)
        {
            return;
        }

        using var box = html.Open(Tag.Div, ClassName.Photos);
        foreach (var photo in others[..^1])
        {
            One(photo);
        }
    }

    private static DatedPhoto[] Shown(BoardOnPage page) =>
        [
            .. from indexed in page.Board.Visits.Select((visit, order) => (visit, order))
            from photo in indexed.visit.Photos
            where PictureNames.IsSafe(photo.File.Value)
            let shown = page.Context.Pictures?.Find(photo.File.Value)
            where shown is not null
            select new DatedPhoto(indexed.visit, indexed.order, photo, shown),
        ];

    private void One(DatedPhoto photo)
    {
        using var figure = html.Open(Tag.Figure);
        using (html.Open(Tag.A).To(LocalLink.ToFile(photo.Shown.Large.Path, 1)))
        {
            var small = photo.Shown.Small;
            html.Open(Tag.Img)
                .Showing(LocalLink.ToFile(small.Path, 1))
                .With(TextAttribute.Alt, photo.Photo.Shows.Value)
                .With(NumberAttribute.Width, small.Width)
                .With(NumberAttribute.Height, small.Height)
                .With(FixedAttribute.LazyLoading)
                .Close();
        }

        html.Open(Tag.FigCaption).Text($"{photo.Visit.Date.Text}: {photo.Photo.Shows.Value}");
    }
}
