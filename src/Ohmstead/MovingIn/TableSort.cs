using Ohmstead.PartsLists;
using Ohmstead.Records.Shapes;

namespace Ohmstead.MovingIn;

/// <summary>What the rows of a table are.</summary>
/// <param name="Name">Its word in options, in the kept mapping and in messages: <c>readings</c>.</param>
/// <param name="Words">What its columns may hold, and how people head them.</param>
internal sealed record TableSort(string Name, ColumnWords Words)
{
    /// <summary>The number of the board that a row is about.</summary>
    public const string Board = "board";

    /// <summary>The day of a row.</summary>
    public const string Date = "date";

    /// <summary>Who did what a row tells.</summary>
    public const string By = "by";

    /// <summary>The part, or the test point.</summary>
    public const string Part = "part";

    /// <summary>Whether a part is in its place: yes or no.</summary>
    public const string Fitted = "fitted";

    /// <summary>The same asked the other way: a mark where the place is empty.</summary>
    public const string NotFitted = "not_fitted";

    /// <summary>The column of remarks.</summary>
    public const string Note = "note";

    private static readonly string[] BoardHeadings = ["board", "boardnumber", "boardno", "boardnr", "boardid"];
    private static readonly string[] DayHeadings = ["date", "day", "when"];
    private static readonly string[] WhoHeadings = ["by", "initials", "who", "operator", "technician"];
    private static readonly string[] PlaceHeadings =
    [
        "part",
        "ref",
        "refdes",
        "reference",
        "designator",
        "position",
        "point",
        "testpoint",
        "place",
    ];
    private static readonly string[] NoteHeadings = ["note", "notes", "remark", "remarks", "comment", "comments"];

    /// <summary>Boards: one row is one board.</summary>
    public static TableSort Boards { get; } =
        new(
            "boards",
            new(
                ["board", "title", "design", "serial", "revision", "maker", "made", "arrived", "from", "complaint", Note],
                [
                    (Board, [.. BoardHeadings, "number", "no", "nr", "inventorynumber", "inventoryno", "id"]),
                    ("title", ["title", "name", "what", "description"]),
                    ("design", ["design", "boardtype"]),
                    ("serial", ["serial", "serialnumber", "serialno", "sn"]),
                    ("revision", ["revision", "rev", "issue"]),
                    ("maker", ["maker", "manufacturer", "make", "mfr"]),
                    ("made", ["made", "year", "yearmade", "built"]),
                    ("arrived", ["arrived", "arrival", "came", "datein", "date", "acquired"]),
                    ("from", ["from", "source", "donor", "camefrom"]),
                    ("complaint", ["complaint", "fault", "symptom"]),
                    (Note, NoteHeadings),
                ],
                [(Board, "the numbers of boards")]
            )
            {
                Prefix = "boards.",
                MustBeCertain = [Board, "title", "arrived"],
            }
        );

    /// <summary>Parts lists of boards: one row is one value in one or several places.</summary>
    public static TableSort Parts { get; } =
        new(
            "parts",
            new(
                [Board, .. ColumnWords.OfParts.Targets, Fitted, NotFitted],
                [
                    (Board, BoardHeadings),
                    (
                        NotFitted,
                        ["dnp", "dni", "dnf", "dns", "notfitted", "notplaced", "notpopulated", "donotplace", "donotpopulate", "unfitted"]
                    ),
                    (Fitted, ["fitted", "populated", "populate", "mounted"]),
                    .. ColumnWords.OfParts.Usual,
                ],
                [(Board, "the numbers of boards"), .. ColumnWords.OfParts.Needed]
            )
            {
                Prefix = "parts.",
                MustBeCertain = [Board, ColumnPlan.Reference, ColumnPlan.Value, Fitted, NotFitted],
            }
        );

    /// <summary>Readings of parts and of test points: one row is one reading.</summary>
    public static TableSort Readings { get; } =
        new(
            "readings",
            OfVisits(
                "readings.",
                [
                    .. BenchShape
                        .Reading.Keys.Concat(BenchShape.Proof.Keys)
                        .Where(key => key != BenchShape.Point && key != BenchShape.Verdict),
                ],
                [
                    ("loss_factor", ["df", "tandelta", "tand", "dissipationfactor"]),
                    ("leakage", ["leakagecurrent", "dcl"]),
                    ("capacitance", ["cap"]),
                    ("frequency", ["freq", "testfrequency"]),
                    ("gain", ["hfe"]),
                    ("instrument", ["meter"]),
                ],
                [(Part, "the part or the point")]
            )
        );

    /// <summary>Work: one row is one thing done, in one or several places.</summary>
    public static TableSort Work { get; } =
        new("work", OfVisits("work.", BenchShape.Work.Keys, [("did", ["work", "done", "action"])], [("did", "what was done")]));

    /// <summary>Lots in the drawer: one row is one lot.</summary>
    public static TableSort Lots { get; } =
        new(
            "lots",
            new(
                [ColumnPlan.Value, .. FileShapes.LotShape.Keys.Select(key => key.Name)],
                [
                    ("lot", ["lot", "lotnumber", "lotno", "lotnr"]),
                    ("received", ["received", "came", "date", "datein"]),
                    ("order", ["order", "orderno", "ordernumber"]),
                    ("price", ["price", "cost", "priceeach"]),
                    ("quantity", ["quantity", "qty", "count", "number", "pieces"]),
                    .. ColumnWords.OfParts.Usual.Where(usual => usual.Target is not (ColumnPlan.Reference or ColumnPlan.Count or "role")),
                ],
                [("lot", "the names of lots"), ("kind", "the kind of part")]
            )
            {
                Prefix = "lots.",
                MustBeCertain = ["lot", "quantity", ColumnPlan.Value],
            }
        );

    /// <summary>All of them, in the order in which they are taken in.</summary>
    public static IReadOnlyList<TableSort> All { get; } = [Boards, Parts, Readings, Work, Lots];

    private static ColumnWords OfVisits(
        string prefix,
        IReadOnlyList<Key> keys,
        (string Target, string[] More)[] more,
        (string, string)[] needed
    )
    {
        string[] targets = [Board, Date, By, .. keys.Select(key => key.Name).Distinct(StringComparer.Ordinal)];
        return new(
            targets,
            [
                (Board, BoardHeadings),
                (Date, DayHeadings),
                (By, WhoHeadings),
                (Part, PlaceHeadings),
                (Note, NoteHeadings),
                .. targets
                    .Except([Board, Date, By, Part, Note], StringComparer.Ordinal)
                    .Select(target =>
                        (
                            target,
                            (string[])
                                [
                                    target.Replace("_", string.Empty, StringComparison.Ordinal),
                                    .. more.Where(one => one.Target == target).SelectMany(one => one.More),
                                ]
                        )
                    ),
            ],
            [(Board, "the numbers of boards"), (Date, "the days"), .. needed]
        )
        {
            Prefix = prefix,
            // Of two columns that can be the same value neither is taken.
            MustBeCertain = targets,
        };
    }
}
