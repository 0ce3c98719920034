using System.Collections.Immutable;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Records.Findings;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Search;

/// <summary>What the search of the pages looks through, as a script of one assignment: pages opened from disk may load a script and nothing
/// else.</summary>
/// <remarks>
/// Boards are told once and meant by their place in the list afterwards. The boards that have a part of a name in a list of their own are
/// kept as gap and length by turns, so that a part that is on every board takes a few bytes. Nothing in the texts can end the script or
/// hide in it.
/// </remarks>
public static class SearchIndex
{
    // A person refines a search long before; the command line tells all of them.
    private const int MostFindings = 5_000;
    private const int LongestMessage = 160;

    /// <summary>The name of its file, at the root of the report.</summary>
    public const string FileName = "search.js";

    private static readonly JsonWriterOptions Layout = new() { Encoder = JavaScriptEncoder.Create(UnicodeRanges.All) };

    /// <summary>Writes the file.</summary>
    /// <param name="buffer">Where to; it is emptied first.</param>
    /// <param name="context">What every page knows.</param>
    /// <param name="boards">All boards, in order of path.</param>
    /// <param name="findings">All findings, in order of path and line.</param>
    public static void Write(PageBuffer buffer, ReportContext context, IReadOnlyList<BoardSummary> boards, ImmutableArray<Finding> findings)
    {
        buffer.Clear();
        buffer.Append("globalThis.ohmsteadIndex = "u8);
        using (var json = new Utf8JsonWriter(buffer, Layout))
        {
            var designs = context.Workshop.Designs.Keys.Order(StringComparer.Ordinal).ToArray();
            json.WriteStartObject();
            // Each state, then each with what is said beside it: a board names its own by place.
            Texts(
                json,
                "states",
                BoardStates
                    .All.Select(BoardStates.Words)
                    .Concat(BoardStates.All.Select(state => $"{BoardStates.Words(state)}; its inspection is overdue"))
            );
            Texts(json, "designs", designs);
            Boards(json, context, boards, designs);
            Parts(json, context, boards, designs);
            Things(json, context, boards);
            Findings(json, boards, findings);
            json.WriteEndObject();
        }

        buffer.Append(";\n"u8);
    }

    private static void Boards(Utf8JsonWriter json, ReportContext context, IReadOnlyList<BoardSummary> boards, string[] designs)
    {
        json.WriteStartArray("boards");
        foreach (var board in boards)
        {
            json.WriteStartArray();
            Text(json, board.Id.Value);
            Text(json, board.Title);
            json.WriteNumberValue((int)board.State + (board.IsLookOverdue ? BoardStates.All.Count : 0));
            json.WriteNumberValue(
                board.Design is null ? -1 : Math.Max(-1, Array.BinarySearch(designs, board.Design, StringComparer.Ordinal))
            );
            var maker = board.Maker
                ?? (board.Design is { } design && context.Workshop.Designs.TryGetValue(design, out var known) ? known.Maker?.Value : null);
            Text(json, PageFrame.Joined(maker, board.Serial, board.Revision));
            json.WriteEndArray();
        }

        json.WriteEndArray();
    }

    private static void Parts(Utf8JsonWriter json, ReportContext context, IReadOnlyList<BoardSummary> boards, string[] designs)
    {
        var places = new SortedDictionary<string, (List<int> Designs, List<int> Runs, int End)>(StringComparer.Ordinal);
        for (var design = 0; design < designs.Length; design++)
        {
            foreach (
                var name in context.Workshop.Designs[designs[design]].Parts.Select(part => part.Ref.Value).Distinct(StringComparer.Ordinal)
            )
            {
                Place(name).Designs.Add(design);
            }
        }

        for (var board = 0; board < boards.Count; board++)
        {
            foreach (var name in boards[board].OwnParts)
            {
                var place = Place(name);
                if (place.End == board && place.Runs.Count > 0)
                {
                    place.Runs[^1]++;
                }
                else if (place.End <= board)
                {
                    place.Runs.Add(board - place.End);
                    place.Runs.Add(1);
                }

                places[name] = place with { End = board + 1 };
            }
        }

        json.WriteStartArray("parts");
        foreach (var (name, place) in places)
        {
            json.WriteStartArray();
            Text(json, name);
            json.WriteStringValue(ElementId.For(IdPrefix.Part, name).Value);
            Numbers(json, place.Designs);
            Numbers(json, place.Runs);
            json.WriteEndArray();
        }

        json.WriteEndArray();

        (List<int> Designs, List<int> Runs, int End) Place(string name) =>
            places.TryGetValue(name, out var there) ? there : places[name] = ([], [], 0);
    }

    private static void Things(Utf8JsonWriter json, ReportContext context, IReadOnlyList<BoardSummary> boards)
    {
        var workshop = context.Workshop;
        json.WriteStartArray("things");
        foreach (var design in DesignUnits.Group(workshop.Designs.Values, boards))
        {
            Thing(
                json,
                "design",
                design.Design.Id.Value,
                PageFrame.Joined(design.Design.Title.Value, design.Design.Maker?.Value, design.Design.Revision?.Value),
                LocalLink.ToFile(SiteAddress.Design(design.Design.Id.Value))
            );
        }

        foreach (var (number, board) in FormerNumbers.Leading(boards))
        {
            Thing(
                json,
                "former number",
                number,
                $"is {board.Id.Value} now, {board.Title}",
                LocalLink.ToFile(SiteAddress.Board(board.Id.Value))
            );
        }

        foreach (var maker in Makers(context, boards))
        {
            // A maker has no page of its own: the list of designs names it.
            Thing(
                json,
                "maker",
                maker,
                string.Empty,
                LocalLink.ToFile(SiteAddress.Collection, 0, ElementId.For(IdPrefix.Section, "designs"))
            );
        }

        var lots = LotAddresses.For(workshop);
        foreach (var lot in workshop.Lots.Values.OrderBy(lot => lot.Id.Value, StringComparer.Ordinal))
        {
            Thing(json, "lot", lot.Id.Value, PartWords.Describe(lot.Values), lots(lot.Id.Value) ?? LocalLink.ToFile(SiteAddress.Drawer));
        }

        foreach (var instrument in workshop.Instruments.Values.OrderBy(instrument => instrument.Id.Value, StringComparer.Ordinal))
        {
            Thing(
                json,
                "instrument",
                instrument.Id.Value,
                PageFrame.Joined(instrument.What.Value, instrument.Maker?.Value),
                LocalLink.ToFile(SiteAddress.Instruments, 0, ElementId.For(IdPrefix.Instrument, instrument.Id.Value))
            );
        }

        foreach (var check in context.Checks.Order(StringComparer.Ordinal))
        {
            Thing(json, "check", check, string.Empty, LocalLink.ToFile(SiteAddress.Check(check)));
        }

        foreach (var (path, words) in SitePages.All)
        {
            Thing(json, "page", words, string.Empty, LocalLink.ToFile(path));
        }

        json.WriteEndArray();
    }

    private static IEnumerable<string> Makers(ReportContext context, IReadOnlyList<BoardSummary> boards) =>
        boards
            .Select(board => board.Maker)
            .Concat(context.Workshop.Designs.Values.Select(design => design.Maker?.Value))
            .OfType<string>()
            .Distinct(StringComparer.Ordinal)
            .Order(StringComparer.Ordinal);

    private static void Findings(Utf8JsonWriter json, IReadOnlyList<BoardSummary> boards, ImmutableArray<Finding> findings)
    {
        var places = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var board = 0; board < boards.Count; board++)
        {
            places.TryAdd(boards[board].Path, board);
        }

        json.WriteStartArray("findings");
        foreach (var finding in findings.OrderByDescending(finding => finding.Severity).Take(MostFindings))
        {
            json.WriteStartArray();
            Text(json, finding.Check);
            Text(
                json,
                finding.Message.Length <= LongestMessage ? finding.Message : string.Concat(finding.Message.AsSpan(0, LongestMessage), "…")
            );
            json.WriteNumberValue(places.GetValueOrDefault(finding.Place.Path, -1));
            Text(json, places.ContainsKey(finding.Place.Path) ? string.Empty : finding.Place.Path);
            json.WriteEndArray();
        }

        json.WriteEndArray();
    }

    private static void Thing(Utf8JsonWriter json, string kind, string name, string words, LocalLink address)
    {
        json.WriteStartArray();
        json.WriteStringValue(kind);
        Text(json, name);
        Text(json, words);
        json.WriteStringValue(address.Encoded);
        json.WriteEndArray();
    }

    private static void Text(Utf8JsonWriter json, string text) => json.WriteStringValue(VisibleText.Escape(text));

    private static void Texts(Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts)
        {
            Text(json, text);
        }

        json.WriteEndArray();
    }

    private static void Numbers(Utf8JsonWriter json, List<int> numbers)
    {
        json.WriteStartArray();
        foreach (var number in numbers)
        {
            json.WriteNumberValue(number);
        }

        json.WriteEndArray();
    }
}
