using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Findings;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Markdown;
using Ohmstead.Report.Pages;
using Ohmstead.Report.Tables;

namespace Ohmstead.Report.Search;

/// <summary>Everything that is found and is no board, group by group and in order of name.</summary>
/// <param name="context">What every page knows.</param>
/// <param name="boards">All boards, in order of path.</param>
internal sealed class WorkshopSentences(ReportContext context, IReadOnlyList<BoardSummary> boards)
{
    // A person refines a search long before; the command line tells all of them.
    private const int MostFindings = 5_000;

    /// <summary>The pages.</summary>
    /// <param name="findings">All findings, in order of path and line.</param>
    /// <param name="checks">What the checks are.</param>
    public IEnumerable<SearchPage> Pages(IReadOnlyList<Finding> findings, IReadOnlyList<CheckText> checks) =>
        [.. Designs(), .. Lots(), .. Orders(), .. Instruments(), .. Makers(), .. Findings(findings), .. Checks(checks), .. Others()];

    private IEnumerable<SearchPage> Designs()
    {
        foreach (var units in DesignUnits.Group(context.Workshop.Designs.Values, boards))
        {
            var design = units.Design;
            var said = new SentenceList();
            said.Add(
                null,
                PageFrame.Joined(
                    $"{design.Id.Value} {design.Title.Value}",
                    design.Maker is { } maker ? "maker " + maker.Value : null,
                    design.Revision is { } revision ? "revision " + revision.Value : null,
                    design.Made is { } made ? "made " + made.Text : null
                )
            );
            foreach (var hazard in design.Hazards)
            {
                said.Add(Section("cautions"), PartSentence.Of(hazard));
            }

            foreach (var fault in design.KnownFaults)
            {
                said.Add(Section("faults"), $"known fault at {fault.At?.Value}: {fault.What.Value}; {fault.Advice?.Value}");
            }

            said.Add(null, design.Note?.Value);
            foreach (var paragraph in StoryWords.Read(design.Body))
            {
                said.AddStory(Section("story"), paragraph);
            }

            foreach (var part in design.Parts)
            {
                said.Add(ElementId.For(IdPrefix.Part, part.Ref.Value), PartSentence.Of(part));
            }

            foreach (var point in design.Points)
            {
                said.Add(ElementId.For(IdPrefix.Point, point.Name.Value), PartSentence.Of(point));
            }

            yield return new(
                SearchGroup.Designs,
                design.Id.Value,
                design.Title.Value,
                string.Join(' ', units.Units.Take(12).Select(board => board.Id.Value)),
                LocalLink.ToFile(SiteAddress.Design(design.Id.Value)),
                said.Taken
            );
        }
    }

    private IEnumerable<SearchPage> Lots()
    {
        var addresses = LotAddresses.For(context.Workshop);
        var readings = (context.Workshop.StockFile?.Bench ?? [])
            .SelectMany(visit => visit.Readings.Select(reading => (visit, reading)))
            .Where(pair => pair.reading.Lot is not null)
            .ToLookup(pair => pair.reading.Lot!.Value, StringComparer.Ordinal);
        foreach (var lot in LotAddresses.InOrder(context.Workshop))
        {
            var said = new SentenceList();
            said.Add(null, $"lot {lot.Id.Value}: {PartSentence.Of(lot.Values)}");
            said.Add(
                null,
                PageFrame.Joined(
                    lot.Received is { } received ? "received " + received.Text : null,
                    lot.Quantity is { } quantity ? quantity.Text + " pieces" : null,
                    lot.Order is { } order ? "order " + order.Value : null,
                    lot.Formed is { } formed ? "formed " + formed.Text : null,
                    lot.ShelfLife is { } shelf ? "shelf life " + shelf.Text : null
                )
            );
            foreach (var (visit, reading) in readings[lot.Id.Value])
            {
                said.Add(null, PartSentence.Of(reading, null), BoardSentences.Head(visit));
            }

            yield return new(
                SearchGroup.Lots,
                lot.Id.Value,
                lot.Values.Kind.Text,
                "in the drawer",
                addresses(lot.Id.Value) ?? LocalLink.ToFile(SiteAddress.Drawer),
                said.Taken
            );
        }
    }

    private IEnumerable<SearchPage> Orders()
    {
        var addresses = BuyingTable.Addresses(context);
        foreach (var order in context.Workshop.Orders.Values.OrderBy(order => order.Id.Value, StringComparer.Ordinal))
        {
            var said = new SentenceList();
            said.Add(
                null,
                PageFrame.Joined(
                    $"order {order.Id.Value} of {order.Placed.Text}",
                    order.From is { } from ? "from " + from.Value : null,
                    order.For.Value,
                    order.Received is { } received ? "received " + received.Text : null,
                    order.PartReceived is { } some ? "partly received " + some.Text : null,
                    order.Lost is { } lost ? "lost " + lost.Text : null,
                    order.Cancelled is { } cancelled ? "cancelled " + cancelled.Text : null,
                    order.Note?.Value
                )
            );
            foreach (var line in order.Lines)
            {
                said.Add(
                    null,
                    PageFrame.Joined(
                        $"line {line.Id.Value}: {line.Quantity.Text}",
                        line.Values is { } values ? PartSentence.Of(values) : line.What?.Value,
                        line.Price?.Value,
                        line.Note?.Value
                    )
                );
            }

            foreach (var came in order.Came)
            {
                said.Add(
                    null,
                    PageFrame.Joined(
                        $"{came.Date.Text}: {came.Quantity.Text} of line {came.Line.Value} came",
                        came.Lot is { } lot ? "lot " + lot.Value : null,
                        came.Note?.Value
                    )
                );
            }

            yield return new(
                SearchGroup.Orders,
                order.Id.Value,
                order.For.Value,
                OrderStates.Words(OrderStates.For(order)),
                addresses(order.Id.Value) ?? LocalLink.ToFile(SiteAddress.Drawer),
                said.Taken
            );
        }
    }

    private IEnumerable<SearchPage> Instruments()
    {
        foreach (var instrument in context.Workshop.Instruments.Values.OrderBy(one => one.Id.Value, StringComparer.Ordinal))
        {
            var said = new SentenceList();
            said.Add(
                null,
                PageFrame.Joined(
                    $"{instrument.Id.Value}: {instrument.What.Value}",
                    instrument.Maker is { } maker ? "maker " + maker.Value : null,
                    instrument.Serial is { } serial ? "serial " + serial.Value : null,
                    instrument.Note?.Value
                )
            );
            foreach (var calibration in instrument.Calibrations)
            {
                said.Add(
                    null,
                    PageFrame.Joined(
                        "calibrated " + calibration.Date.Text,
                        calibration.Valid is { } valid ? "valid " + valid.Text : null,
                        calibration.Certificate is { } certificate ? "certificate " + certificate.Value : null
                    )
                );
            }

            yield return new(
                SearchGroup.Instruments,
                instrument.Id.Value,
                instrument.What.Value,
                string.Empty,
                LocalLink.ToFile(SiteAddress.Instruments, 0, ElementId.For(IdPrefix.Instrument, instrument.Id.Value)),
                said.Taken
            );
        }
    }

    // A maker has no page of its own: the list of designs names those that made boards.
    private IEnumerable<SearchPage> Makers() =>
        boards
            .Select(board => board.Maker)
            .Concat(context.Workshop.Designs.Values.Select(design => design.Maker?.Value))
            .OfType<string>()
            .Distinct(StringComparer.Ordinal)
            .Order(StringComparer.Ordinal)
            .Select(maker =>
                One(
                    SearchGroup.Makers,
                    maker,
                    "maker",
                    LocalLink.ToFile(SiteAddress.Collection, 0, Section("designs")),
                    PageFrame.Joined([
                        $"{maker} made",
                        .. context
                            .Workshop.Designs.Values.Where(design => design.Maker?.Value == maker)
                            .Select(design => design.Id.Value)
                            .Order(StringComparer.Ordinal),
                    ])
                )
            );

    // Those of boards stand on their pages.
    private IEnumerable<SearchPage> Findings(IReadOnlyList<Finding> findings)
    {
        var paths = boards.Select(board => board.Path).ToHashSet(StringComparer.Ordinal);
        foreach (
            var file in findings
                .Where(finding => !paths.Contains(finding.Place.Path))
                .Take(MostFindings)
                .GroupBy(finding => finding.Place.Path, StringComparer.Ordinal)
        )
        {
            var said = new SentenceList();
            foreach (var finding in file.OrderByDescending(finding => finding.Severity))
            {
                said.Add(null, $"{finding.Check}: {finding.Message}");
            }

            yield return new(SearchGroup.Findings, file.Key, "findings", string.Empty, LocalLink.ToFile(SiteAddress.Findings), said.Taken);
        }
    }

    private static IEnumerable<SearchPage> Checks(IReadOnlyList<CheckText> checks) =>
        checks.Select(check =>
            One(SearchGroup.Checks, check.Name, "check", LocalLink.ToFile(SiteAddress.Check(check.Name)), $"{check.Name}: {check.Summary}")
        );

    private IEnumerable<SearchPage> Others()
    {
        var collection = context.Workshop.Collection;
        yield return One(
            SearchGroup.Pages,
            collection.Name,
            "the collection",
            LocalLink.ToFile(SiteAddress.Collection),
            PageFrame.Joined(collection.Name, collection.Keeper?.Value, collection.Place?.Value, collection.Note?.Value)
        );
        foreach (var (path, words) in SitePages.All)
        {
            yield return One(SearchGroup.Pages, words, "page", LocalLink.ToFile(path), words);
        }
    }

    private static SearchPage One(SearchGroup group, string name, string title, LocalLink address, string sentence)
    {
        var said = new SentenceList();
        said.Add(null, sentence);
        return new(group, name, title, string.Empty, address, said.Taken);
    }

    private static ElementId Section(string name) => ElementId.For(IdPrefix.Section, name);
}
