using System.Globalization;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;
using Ical.Net.Serialization.DataTypes;
using Calendar = Ical.Net.Calendar;

namespace Ohmstead.Output;

/// <summary>What a calendar says of one day that something falls due.</summary>
/// <param name="Uid">What tells it from all others.</param>
/// <param name="Day">The day.</param>
/// <param name="Summary">What, in one line.</param>
/// <param name="Description">Why.</param>
/// <param name="Category">Of what kind it is.</param>
internal readonly record struct DayEvent(string Uid, DateOnly Day, string Summary, string Description, string Category);

/// <summary>
/// A calendar with one event as the library writes it, taken apart: every other event has the same lines with values of its own. An event
/// on its way through the library costs thirty kilobytes, and a collection has thousands.
/// </summary>
internal sealed class EventPattern
{
    private static readonly DayEvent Any = new("uid", new(2000, 1, 1), "summary", "description", "category");

    private readonly List<(string Start, string? Property)> lines = [];
    private readonly List<string> head = [];
    private readonly List<string> tail = [];
    private readonly StringSerializer escaping = new(new SerializationContext());

    /// <summary>Has the library write the pattern.</summary>
    /// <param name="product">Who made the calendar.</param>
    /// <param name="today">The day of the run, which every event is stamped with.</param>
    public EventPattern(string product, DateOnly today)
    {
        var calendar = new Calendar { ProductId = product };
        calendar.Events.Add(Event(Any, today));
        var isBefore = true;
        foreach (
            var line in (new CalendarSerializer().SerializeToString(calendar) ?? string.Empty)
                .ReplaceLineEndings("\n")
                .Split('\n', StringSplitOptions.RemoveEmptyEntries)
        )
        {
            isBefore &= line != "BEGIN:VEVENT";
            if (isBefore)
            {
                head.Add(line);
            }
            else if (line == "END:VCALENDAR")
            {
                tail.Add(line);
            }
            else
            {
                var property = line[..line.AsSpan().IndexOfAny(':', ';')];
                lines.Add(IsOwn(property) ? (line[..(line.IndexOf(':', StringComparison.Ordinal) + 1)], property) : (line, null));
            }
        }
    }

    /// <summary>The lines before the first event.</summary>
    public IReadOnlyList<string> Head => head;

    /// <summary>The lines behind the last.</summary>
    public IReadOnlyList<string> Tail => tail;

    /// <summary>How many lines an event has.</summary>
    public int Lines => lines.Count;

    /// <summary>One line of an event, in two pieces and not folded.</summary>
    public (string Start, string Value) Line(int at, DayEvent told) =>
        (
            lines[at].Start,
            lines[at].Property switch
            {
                null => string.Empty,
                "DTSTART" => Written(told.Day),
                "DTEND" => Written(told.Day.AddDays(1)),
                var text => escaping.SerializeToString(Text(text, told)) ?? string.Empty,
            }
        );

    /// <summary>An event as the library holds it.</summary>
    internal static CalendarEvent Event(DayEvent told, DateOnly today) =>
        new()
        {
            Uid = told.Uid,
            DtStamp = new CalDateTime(today.Year, today.Month, today.Day, 0, 0, 0, CalDateTime.UtcTzId),
            Start = new CalDateTime(told.Day),
            End = new CalDateTime(told.Day.AddDays(1)),
            Summary = told.Summary,
            Description = told.Description,
            Categories = [told.Category],
            Transparency = TransparencyType.Transparent,
        };

    private static bool IsOwn(string property) => property is "DTSTART" or "DTEND" || Text(property, Any) is not null;

    private static string? Text(string property, DayEvent told) =>
        property switch
        {
            "UID" => told.Uid,
            "SUMMARY" => told.Summary,
            "DESCRIPTION" => told.Description,
            "CATEGORIES" => told.Category,
            _ => null,
        };

    private static string Written(DateOnly day) => day.ToString("yyyyMMdd", CultureInfo.InvariantCulture);
}
