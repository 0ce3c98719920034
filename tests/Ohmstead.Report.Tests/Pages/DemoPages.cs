using System.Text;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Ohmstead.Assessment.Ahead;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Checks;
using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.Families;
using Ohmstead.Assessment.Fit;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Pages;
using Ohmstead.Report.Sheets;
using Ohmstead.Yaml;

namespace Ohmstead.Report.Tests.Pages;

/// <summary>Every page of the demo collection, read back with an HTML parser that is not ours.</summary>
public sealed class DemoPages : IDisposable
{
    private readonly PageBuffer buffer = new();

    /// <summary>Reads the records and writes the pages.</summary>
    public DemoPages()
    {
        var records = Path.Combine(Root(), "records");
        var nodes = new YamlNodeReader();
        T Read<T>(string path, FileForm form, Func<string, NodeReading, FileReading<T>> bind)
            where T : class =>
            bind(path, nodes.Read(path, File.ReadAllBytes(Path.Combine(records, path)), form, ReadingLimits.Usual)).File!;
        string[] In(string folder) =>
            [
                .. Directory
                    .GetFiles(Path.Combine(records, folder), "*.md")
                    .Select(file => $"{folder}/{Path.GetFileName(file)}")
                    .Order(StringComparer.Ordinal),
            ];

        var workshop = new Workshop(
            Read("collection.yaml", FileForm.Yaml, FileBinding.Collection),
            Read("instruments.yaml", FileForm.Yaml, FileBinding.Instruments),
            Read("stock.yaml", FileForm.Yaml, FileBinding.Stock),
            [.. In("designs").Select(path => Read(path, FileForm.Markdown, FileBinding.Design))]
        );
        JudgedBoard[] boards = [.. In("boards").Select(path => Judged.Board(Read(path, FileForm.Markdown, FileBinding.Board), workshop))];
        (Workshop, Boards) = (workshop, boards);
        BoardSummary[] summaries = [.. boards.Select(board => BoardSummary.From(board))];
        var checks = Checks();
        var context = new ReportContext(
            workshop,
            boards.Select(board => board.Board.Id.Value).ToHashSet(StringComparer.Ordinal),
            new DateOnly(2026, 11, 25),
            "0.0.0"
        )
        {
            Drawer = Drawer.Count(workshop, BoardSummary.UseOfLots(summaries), new DateOnly(2026, 11, 25)),
            Checks = checks.Select(check => check.Name).ToHashSet(StringComparer.Ordinal),
            Commit = "0123abc",
            Published = new(new("https://boards.example/saltmarsh/")),
            Pictures = new InventedPictures(),
        };

        var pages = new Dictionary<string, IDocument>(StringComparer.Ordinal)
        {
            [SiteAddress.Collection] = Page(() => CollectionPage.Write(buffer, context, summaries)),
        };
        pages[SiteAddress.Families] = Page(() => FamiliesPage.Write(buffer, context, CollectionFamilies.Count(summaries)));
        pages[SiteAddress.About] = Page(() => AboutPage.Write(buffer, context));
        pages[SiteAddress.Drawer] = Page(() => DrawerPage.Write(buffer, context, summaries));
        pages[SiteAddress.Instruments] = Page(() => InstrumentsPage.Write(buffer, context, summaries));
        pages[SiteAddress.Checks] = Page(() => ChecksPage.Write(buffer, context, checks));
        foreach (var check in checks)
        {
            pages[SiteAddress.Check(check.Name)] = Page(() => CheckPage.Write(buffer, context, check));
        }

        var pictures = new NoPictures();
        Finding[] findings =
        [
            .. boards.Select(board => new BoardUnderCheck(board, workshop, context.Today, pictures)).SelectMany(CheckCatalogue.Look),
        ];
        pages[SiteAddress.Findings] = Page(() => FindingsPage.Write(buffer, context, [.. findings], summaries));
        var until = context.Today.AddYears(1);
        pages[SiteAddress.Ahead] = Page(() =>
            AheadPage.Write(buffer, context, YearAhead.List(workshop, summaries, context.Today, until), until)
        );
        var sheets = new Dictionary<string, IDocument>(StringComparer.Ordinal)
        {
            [SiteAddress.CollectionSheet] = Page(() => CollectionSheet.Write(buffer, context, summaries)),
        };
        foreach (var board in boards)
        {
            pages[SiteAddress.Board(board.Board.Id.Value)] = Page(() => BoardPage.Write(buffer, context, board));
            sheets[SiteAddress.BoardSheet(board.Board.Id.Value)] = Page(() => BoardSheet.Write(buffer, context, board));
        }

        foreach (var units in DesignUnits.Group(workshop.Designs.Values, summaries))
        {
            var design = units with
            {
                Compared = [.. boards.Where(board => board.Design?.Id.Value == units.Design.Id.Value).Select(UnitPlaces.From)],
            };
            pages[SiteAddress.Design(design.Design.Id.Value)] = Page(() => DesignPage.Write(buffer, context, design));
        }

        Pages = pages;
        Sheets = sheets;
    }

    /// <summary>What the collection shares.</summary>
    public Workshop Workshop { get; }

    /// <summary>Its boards.</summary>
    public IReadOnlyList<JudgedBoard> Boards { get; }

    /// <summary>The pages by their path in the report.</summary>
    public IReadOnlyDictionary<string, IDocument> Pages { get; }

    /// <summary>What is printed on one sheet of paper, by its path in the report.</summary>
    public IReadOnlyDictionary<string, IDocument> Sheets { get; }

    /// <inheritdoc/>
    public void Dispose() => buffer.Dispose();

    private IDocument Page(Action write)
    {
        write();
        return new HtmlParser(new HtmlParserOptions { IsStrictMode = true }).ParseDocument(Encoding.UTF8.GetString(buffer.Written));
    }

    private static CheckText[] Checks()
    {
        var assembly = typeof(CheckCatalogue).Assembly;
        return
        [
            .. CheckCatalogue.Descriptions.Select(check =>
            {
                using var reader = new StreamReader(assembly.GetManifestResourceStream($"checks/{check.Name}.md")!);
                return CheckText.Read(check.Name, reader.ReadToEnd(), check.Severity);
            }),
        ];
    }

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Ohmstead.slnx")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("there is no Ohmstead.slnx above the tests");
    }

    private sealed class NoPictures : IPictures
    {
        public PictureState At(string path) => PictureState.Present;

        public IEnumerable<string> NamesInFolder(string path) => [];

        public PictureFault? Fault(string path) => null;
    }
}
