using Ohmstead.Report.Html;

namespace Ohmstead.Report.Addresses;

/// <summary>The addresses of the report: the file of each page, from its root. They last as long as what a page is about keeps its
/// name.</summary>
public static class SiteAddress
{
    /// <summary>The page of the collection.</summary>
    public const string Collection = "index.html";

    /// <summary>The year ahead.</summary>
    public const string Ahead = "ahead.html";

    /// <summary>The drawer.</summary>
    public const string Drawer = "drawer.html";

    /// <summary>The instruments.</summary>
    public const string Instruments = "instruments.html";

    /// <summary>The families of parts.</summary>
    public const string Families = "families.html";

    /// <summary>The findings.</summary>
    public const string Findings = "findings.html";

    /// <summary>The checks.</summary>
    public const string Checks = "checks.html";

    /// <summary>What changed since an earlier state.</summary>
    public const string Changes = "changes.html";

    /// <summary>How verdicts are reached.</summary>
    public const string About = "about.html";

    /// <summary>Where the page about verdicts explains the drawings.</summary>
    internal static ElementId Drawings { get; } = ElementId.For(IdPrefix.Section, "drawings");

    /// <summary>Where the page about verdicts lists the files for programs.</summary>
    internal static ElementId ForPrograms { get; } = ElementId.For(IdPrefix.Section, "programs");

    /// <summary>The page of a board. It lasts as long as the board keeps its number.</summary>
    public static string Board(string board) => $"boards/{board}.html";

    /// <summary>The file that tells programs what the page of a board tells people.</summary>
    public static string BoardData(string board) => $"boards/{board}.json";

    /// <summary>The badge of the collection.</summary>
    public const string CollectionBadge = "badge.svg";

    /// <summary>The badge of a board.</summary>
    public static string Badge(string board) => $"badges/{board}.svg";

    /// <summary>The code that leads to the page of a board, where the address of the pages is known.</summary>
    public static string Code(string board) => $"codes/{board}.svg";

    /// <summary>A board on one sheet of paper.</summary>
    public static string BoardSheet(string board) => $"sheets/{board}.html";

    /// <summary>The collection on one sheet of paper. A tilde is in no name of a record.</summary>
    public const string CollectionSheet = "sheets/~collection.html";

    /// <summary>The page of a design.</summary>
    public static string Design(string design) => $"designs/{design}.html";

    /// <summary>The page that compares the places of a design over its boards. A tilde is in no name of a record.</summary>
    public static string PlacesCompared(string design) => $"designs/{design}~places.html";

    /// <summary>The page of a check.</summary>
    public static string Check(string check) => $"checks/{check}.html";
}
