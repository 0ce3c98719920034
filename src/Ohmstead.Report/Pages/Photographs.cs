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

    /// <summary>Writes the section; nothing when there is no photograph that can be shown.</summary>
    public void Write()
    {
        DatedPhoto[] photos =
        [
            .. from indexed in page.Board.Visits.Select((visit, order) => (visit, order))
            from photo in indexed.visit.Photos
            where PictureNames.IsSafe(photo.File.Value)
            let shown = page.Context.Pictures?.Find(photo.File.Value)
            where shown is not null
            select new DatedPhoto(indexed.visit, indexed.order, photo, shown),
        ];
        if (photos.Length == 0)
        {
            return;
        }

        using var section = Section.Open(html, "photographs", "Photographs");
        var pairs = PhotoPairs.Find(page.Board, photos);
        foreach (var pair in pairs)
        {
            html.Open(Tag.H3).Text($"{pair.Place}, {pair.Earlier.Visit.Date.Text} beside {pair.Later.Visit.Date.Text}");
            html.Open(Tag.P, ClassName.Fine).Text($"Work there from the one to the other: {string.Join(", ", pair.Work)}.");
            using var beside = html.Open(Tag.Div, ClassName.Pair);
            One(pair.Earlier);
            One(pair.Later);
        }

        var others = photos.Except(pairs.SelectMany(pair => new[] { pair.Earlier, pair.Later })).ToArray();
        if (others.Length == 0)
        {
            return;
        }

        using var box = html.Open(Tag.Div, ClassName.Photos);
        foreach (var photo in others)
        {
            One(photo);
        }
    }

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
