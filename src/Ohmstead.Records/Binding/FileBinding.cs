using System.Collections.Immutable;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Binding;

/// <summary>What reading a file into its model gave.</summary>
/// <typeparam name="T">The model of the file.</typeparam>
/// <param name="File">The model, or null when it could not be read.</param>
/// <param name="Findings">What is wrong, in the order found.</param>
public sealed record FileReading<T>(T? File, ImmutableArray<Finding> Findings)
    where T : class;

/// <summary>Reads the five files of a collection into their models.</summary>
public static class FileBinding
{
    /// <summary>The newest version of the record format that is read here; each before it is read as well.</summary>
    public const int KnownFormat = 1;

    /// <summary>Reads collection.yaml.</summary>
    public static FileReading<CollectionFile> Collection(string path, NodeReading text) =>
        Read(path, text, FileShapes.Collection, fields => fields.Text("collection") is not { } name
                ? null
                : new CollectionFile(path, name.Value)
                {
                    Keeper = fields.Text("keeper"),
                    Place = fields.Text("place"),
                    TimeZone = fields.Text("time_zone"),
                    Site = fields.Address("site"),
                    Repository = fields.AddressOfRecords("repository"),
                    IsInvented = fields.Word("invented", Vocabulary.YesNo) is { Value: true },
                    Decision = fields.Word("decision", Vocabulary.DecisionRules),
                    LookEvery = fields.Quantity("look_every"),
                    ToldBefore = fields.Date("told_before"),
                    Duty = Duty(fields.Mapping("duty")),
                    Note = fields.Text("note"),
                });

    /// <summary>Reads instruments.yaml.</summary>
    public static FileReading<InstrumentsFile> Instruments(string path, NodeReading text) =>
        Read(path, text, FileShapes.Instruments, fields =>
        {
            var (instruments, unread) = BenchBinding.Named(fields, "instruments", "id", Instrument);
            return new InstrumentsFile(path, instruments) { Unread = unread, Note = fields.Text("note") };
        });

    /// <summary>Reads stock.yaml.</summary>
    public static FileReading<StockFile> Stock(string path, NodeReading text) => Read(path, text, FileShapes.Stock, fields =>
        {
            var (lots, unreadLots) = BenchBinding.Named(fields, "lots", "lot", Lot);
            var (orders, unreadOrders) = BenchBinding.Named(fields, "orders", "order", OrderBinding.Order);
            return new StockFile(path, lots, orders, BenchBinding.StockVisits(fields))
            {
                UnreadLots = unreadLots,
                UnreadOrders = unreadOrders,
                Note = fields.Text("note"),
            };
        });

    /// <summary>Reads a design.</summary>
    public static FileReading<DesignFile> Design(string path, NodeReading text) => Read(path, text, FileShapes.Design, fields =>
        {
            var (id, title) = (fields.Id("design"), fields.Text("title"));
            var (parts, unreadParts) = BenchBinding.Named(fields, "parts", PartShape.Ref.Name, part => PartBinding.Part(part, path));
            var (points, unreadPoints) = BenchBinding.Named(fields, "points", "point", point => Point(point, path));
            var hazards = BenchBinding.Each(fields, "hazards", Hazard);
            var faults = BenchBinding.Each(fields, "known_faults", KnownFault);
            return id is null || title is null
                ? null
                : new DesignFile(path, id, title)
                {
                    Maker = fields.Text("maker"),
                    Revision = fields.Text("revision"),
                    Made = fields.RoughDate("made"),
                    Parts = parts,
                    Points = points,
                    UnreadParts = unreadParts,
                    UnreadPoints = unreadPoints,
                    Hazards = hazards,
                    KnownFaults = faults,
                    Note = fields.Text("note"),
                    Body = text.Body,
                    BodyLine = text.BodyLine,
                };
        });

    /// <summary>Reads a board.</summary>
    public static FileReading<BoardFile> Board(string path, NodeReading text) => Board(path, text, null);

    /// <summary>Reads a board of which another state may have been read.</summary>
    /// <param name="path">The path of the file.</param>
    /// <param name="text">Its nodes.</param>
    /// <param name="items">What items were read as in another state of the record; null where one state is read.</param>
    public static FileReading<BoardFile> Board(string path, NodeReading text, ReadItems? items) =>
        Read(
            path,
            text,
            FileShapes.Board,
            fields =>
            {
                // Everything is read even when the number is missing, so that one run names every fault.
                var board = new BoardFile(
                    path,
                    fields.Id("board") ?? new(string.Empty, string.Empty, fields.Spot),
                    fields.Text("title") ?? new(string.Empty, string.Empty, fields.Spot)
                )
                {
                    Design = fields.Id("design"),
                    Serial = fields.Text("serial"),
                    Revision = fields.Text("revision"),
                    Maker = fields.Text("maker"),
                    Made = fields.RoughDate("made"),
                    Arrived = fields.Mapping("arrived") is { } arrived
                        ? new(arrived.RoughDate("date"), arrived.Text("from"), arrived.Text("complaint"), arrived.Text("note"))
                        : null,
                    ToldBefore = fields.Date("told_before"),
                    Duty = Duty(fields.Mapping("duty")),
                };
                var (parts, unreadParts) = BenchBinding.Named(fields, "parts", PartShape.Ref.Name, part => PartBinding.Part(part, null));
                var (points, unreadPoints) = BenchBinding.Named(fields, "points", "point", point => Point(point, null));
                board = board with
                {
                    Parts = parts,
                    UnreadParts = unreadParts,
                    Points = points,
                    UnreadPoints = unreadPoints,
                    Hazards = BenchBinding.Each(fields, "hazards", Hazard),
                    Bench = BenchBinding.Visits(fields),
                    Waiting = BenchBinding.Each(fields, "waiting", Wait),
                    Whereabouts = BenchBinding.Each(fields, "whereabouts", WentTo),
                    Formerly = BenchBinding.Each(fields, "formerly", Former),
                    Note = fields.Text("note"),
                    Body = text.Body,
                    BodyLine = text.BodyLine,
                };
                return board.Id.Value.Length == 0 || board.Title.Value.Length == 0 ? null : board;
            },
            items
        );

    internal static FileReading<T> Read<T>(string path, NodeReading text, Shape shape, Func<Fields, T?> read, ReadItems? items = null)
        where T : class
    {
        if (text.Root is not { } root)
        {
            return new(null, text.Findings);
        }

        var binder = new Binder(path, items);
        if (
            root.ValueOf("format") is ScalarNode { Text: var written } scalar
            && int.TryParse(
                written,
                System.Globalization.NumberStyles.None,
                System.Globalization.CultureInfo.InvariantCulture,
                out var format
            )
            && format > KnownFormat
        )
        {
            binder.Report(
                RecordChecks.FormatNewer,
                scalar.Spot,
                $"this record has format {written}, this program knows format {KnownFormat}",
                "use a newer version of the program"
            );
            return new(null, [.. text.Findings, .. binder.Findings]);
        }

        var fields = binder.Bind(root, shape);
        if (fields.Count("format") is { Value: < KnownFormat } unknown)
        {
            binder.Report(
                RecordChecks.FormatUnknown,
                unknown.Spot,
                $"there is no format {unknown.Text}, this program knows format {KnownFormat}",
                $"write format: {KnownFormat}, or leave the key out"
            );
        }

        var file = read(fields);
        return new(file, text.Findings.Length == 0 ? binder.Findings : [.. text.Findings, .. Unsaid(binder.Findings, text.Findings)]);
    }

    // A comma that cuts a number in two is seen by the text and by the number: one cause, one message.
    // A value that cannot be read because of a character that nobody sees has been told of by that.
    private static bool IsOfHidden(Place place, ILookup<int, int> hidden) =>
        hidden[place.Line].Any(column => column >= place.Column && column < place.Column + place.Length);

    private static IEnumerable<Finding> Unsaid(ImmutableArray<Finding> findings, ImmutableArray<Finding> said)
    {
        var places = said.Select(finding => (finding.Check, finding.Place.Line, finding.Place.Column)).ToHashSet();
        var hidden = said.Where(finding =>
                finding.Check is TextChecks.ControlCharacter or TextChecks.HiddenCharacter or TextChecks.NotACharacter
            )
            .ToLookup(finding => finding.Place.Line, finding => finding.Place.Column);
        var full = said.Where(finding => finding.More > 0).Select(finding => finding.Check).ToHashSet(StringComparer.Ordinal);
        return findings.Where(finding =>
            !full.Contains(finding.Check)
            && !places.Contains((finding.Check, finding.Place.Line, finding.Place.Column))
            && !IsOfHidden(finding.Place, hidden)
        );
    }

    private static Duty? Duty(Fields? fields) =>
        fields is null
            ? null
            : new(fields.Count("hours_per_year"), fields.Quantity("temperature"))
            {
                AtTimes = BenchBinding.Each(fields, "at_times", item =>
                    (item.Count("hours_per_year"), item.Quantity("temperature")) is ({ } hours, { } warm) ? new DutyPart(hours, warm) : null
                ),
            };

    private static RecordedHazard? Hazard(Fields fields) =>
        fields.Word("hazard", Vocabulary.Hazards) is not { } kind
            ? null
            : new RecordedHazard(kind, fields.Spot)
            {
                At = fields.Text("at"),
                Voltage = fields.Quantity("voltage"),
                Capacitance = fields.Quantity("capacitance"),
                Bleed = fields.Quantity("bleed"),
                Note = fields.Text("note"),
            };

    private static TestPoint? Point(Fields fields, string? fromDesign)
    {
        if (fields.Id("point") is not { } name)
        {
            return null;
        }

        var word = fields.Word("measures", Vocabulary.PointMeasures);
        var measures = word?.Value ?? PointMeasure.Voltage;

        // What the limits are in is not known when 'measures' cannot be read: they would be refused for the fault of another.
        var isKnown = word is not null || !fields.Holds("measures");
        var dimension = measures switch
        {
            PointMeasure.Voltage => Dimension.Voltage,
            PointMeasure.Current => Dimension.Current,
            PointMeasure.Frequency => Dimension.Frequency,
            PointMeasure.Temperature => Dimension.Temperature,
            PointMeasure.Hours or PointMeasure.Result => Dimension.Number,
        };
        var nominal = isKnown ? fields.Quantity("nominal", dimension) : null;
        var isNominalRead = isKnown && (nominal is not null || !fields.Holds("nominal"));
        return new TestPoint(name, measures, fields.Spot, fromDesign)
        {
            Nominal = nominal,
            Tolerance = isNominalRead ? fields.Tolerance("tolerance", dimension, nominal?.Value) : null,
            Low = isKnown ? fields.Quantity("low", dimension) : null,
            High = isKnown ? fields.Quantity("high", dimension) : null,
            RippleLimit = fields.Quantity("ripple_limit"),
            Rail = fields.Word("rail", Vocabulary.Rails),
            RatedCurrent = fields.Quantity("rated_current"),
            Reservoir = fields.Id("reservoir"),
            Winding = fields.Quantity("winding"),
            Input = fields.Id("input"),
            SourceResistance = fields.Quantity("source_resistance"),
            Hours = fields.Number("hours"),
            IsRequired = fields.Word("required", Vocabulary.YesNo) is not { Value: false },
            Source = fields.Text("source"),
            Note = fields.Text("note"),
        };
    }

    private static KnownFault? KnownFault(Fields fields) =>
        fields.Text("what") is { } what ? new(fields.Text("at"), what, fields.Text("advice")) : null;

    private static WhereaboutsEntry? WentTo(Fields fields)
    {
        var (by, at, owner, to) = (fields.Text("by"), fields.Text("at"), fields.Text("owner"), fields.Text("to"));
        var (until, note) = (fields.Date("until"), fields.Text("note"));
        return (fields.Date("date"), fields.Word("did", Vocabulary.Whereabouts)) is ({ } date, { } did)
            ? new(date, did, fields.Spot)
            {
                By = by,
                At = at,
                Owner = owner,
                To = to,
                Until = until,
                Note = note,
            }
            : null;
    }

    private static FormerNumber? Former(Fields fields)
    {
        var until = fields.Date("until");
        return fields.Id("number") is { } number ? new(number, until) : null;
    }

    private static Wait? Wait(Fields fields) =>
        (fields.Date("since"), fields.Text("for")) is not ({ } since, { } what)
            ? null
            : new Wait(since, what, fields.Spot)
            {
                Order = fields.Id("order"),
                Line = fields.Id("line"),
                Blocks = fields.Text("blocks"),
                Until = fields.Date("until"),
            };

    private static Instrument? Instrument(Fields fields)
    {
        var (id, what) = (fields.Id("id"), fields.Text("what"));
        var calibrations = BenchBinding.Each(fields, "calibrations", item =>
            item.Date("date") is { } date ? new Calibration(date, item.Quantity("valid"), item.Text("certificate")) : null
        );
        var accuracies = BenchBinding.Each(fields, "accuracy", Accuracy);
        return id is null || what is null
            ? null
            : new Instrument(id, what, fields.Spot)
            {
                Maker = fields.Text("maker"),
                Serial = fields.Text("serial"),
                Calibrations = calibrations,
                Accuracies = accuracies,
                Note = fields.Text("note"),
            };
    }

    private static Accuracy? Accuracy(Fields fields)
    {
        if (fields.Word("measures", Vocabulary.InstrumentMeasures) is not { } measures)
        {
            return null;
        }

        var dimension = MeasuredDimension.From(measures.Value);
        return new Accuracy(
            measures,
            fields.Quantity("error"),
            fields.Count("digits"),
            fields.Quantity("step", dimension),
            fields.Quantity("fixed", dimension),
            fields.Quantity("up_to", dimension),
            fields.Spot
        )
        {
            Certificate = fields.Quantity("certificate"),
        };
    }

    private static Lot? Lot(Fields fields) =>
        (fields.Id("lot"), PartBinding.Values(fields, isLot: true)) is not ({ } id, { } values)
            ? null
            : new Lot(id, values, fields.Spot)
            {
                Received = fields.RoughDate("received"),
                Quantity = fields.Count("quantity"),
                Order = fields.Id("order"),
                Price = fields.Text("price"),
                Formed = fields.Date("formed"),
                ShelfLife = fields.Quantity("shelf_life"),
            };
}
