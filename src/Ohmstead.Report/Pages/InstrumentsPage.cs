using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Electronics;
using Ohmstead.Records.Model;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Pages;

/// <summary>The page of the instruments: what each is good for, when it was calibrated and is due, and which readings were taken while no
/// calibration held.</summary>
public static class InstrumentsPage
{
    private const int MostDays = 12;

    /// <summary>Writes the page.</summary>
    public static void Write(PageBuffer buffer, ReportContext context, IReadOnlyList<BoardSummary> boards) =>
        PageFrame.Write(
            buffer,
            context,
            new(SiteAddress.Instruments, "Instruments and their calibration", Lead(InOrder(context), Uses(context, boards), context.Today)),
            (context, boards),
            static (html, page) => Content(html, page.context, page.boards)
        );

    private static Instrument[] InOrder(ReportContext context) =>
        [.. context.Workshop.Instruments.Values.OrderBy(instrument => instrument.Id.Value, StringComparer.Ordinal)];

    private static void Content(HtmlWriter html, ReportContext context, IReadOnlyList<BoardSummary> boards)
    {
        var instruments = InOrder(context);
        var uses = Uses(context, boards);
        using (html.Open(Tag.Header, ClassName.Opening))
        {
            html.Open(Tag.H1).Text("Instruments and their calibration");
            using var content = html.Open(Tag.Div, ClassName.Content);
            html.Open(Tag.P, ClassName.Lead).Text(Lead(instruments, uses, context.Today));
            html.Open(Tag.P)
                .Text(
                    "A reading is judged by the calibration in force on its own day. What an instrument is good for becomes the "
                        + "uncertainty of each of its readings."
                );
        }

        if (instruments.Length == 0)
        {
            return;
        }

        using var section = Section.Open(html, "instruments", "Instruments");
        new Ledger<Instrument>(
            new("Instrument", instrument => instrument.Id.Value) { IsShort = true },
            new("What", (page, instrument) => What(page, instrument, context.Today)) { IsPlain = true },
            new("Good for", GoodFor),
            new("Readings", (page, instrument) => Readings(page, instrument, [.. uses[instrument.Id.Value]]))
        )
        {
            Anchor = instrument => ElementId.For(IdPrefix.Instrument, instrument.Id.Value),
        }.Write(html, "Instruments", instruments);
    }

    private static ILookup<string, Use> Uses(ReportContext context, IReadOnlyList<BoardSummary> boards) =>
        boards
            .SelectMany(board => board.InstrumentDays.Select(day => (day.Instrument, Use: new Use(board.Id.Value, day.Day, day.Readings))))
            .Concat(
                InstrumentDay
                    .Collect(context.Workshop.StockFile?.Bench ?? [])
                    .Select(day => (day.Instrument, Use: new Use(null, day.Day, day.Readings)))
            )
            .ToLookup(pair => pair.Instrument, pair => pair.Use, StringComparer.Ordinal);

    private static string Lead(Instrument[] instruments, ILookup<string, Use> uses, DateOnly today)
    {
        if (instruments.Length == 0)
        {
            return "No instrument is on record.";
        }

        // An instrument without any calibration on record is only checked against a known part: it cannot run out.
        var due = instruments.Count(instrument => CalibrationRules.Lapse(instrument, today) is not null);
        var late = instruments.Sum(instrument =>
            uses[instrument.Id.Value].Where(use => CalibrationRules.Lapse(instrument, use.Day) is not null).Sum(use => use.Readings)
        );
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{instruments.Length} instruments; {(due == 0 ? "all calibrations hold" : $"the calibration of {due} has run out")}; "
                + $"{(late == 0 ? "no reading was" : late == 1 ? "one reading was" : $"{late} readings were")} taken while none held."
        );
    }

    private static void What(HtmlWriter html, Instrument instrument, DateOnly today)
    {
        html.Text(instrument.What.Value);
        if (
            PageFrame.Joined(
                instrument.Maker?.Value,
                instrument.Serial is { } serial ? "serial " + serial.Value : null,
                instrument.Note?.Value
            ) is
            { Length: > 0 } more
        )
        {
            html.Text(" ");
            html.Open(Tag.Small).Text(more);
        }

        Calibrated(html, instrument, today);
    }

    private static void GoodFor(HtmlWriter html, Instrument instrument)
    {
        using var list = html.Open(Tag.Ul);
        foreach (var accuracy in instrument.Accuracies)
        {
            html.Open(Tag.Li).Text(Words(accuracy));
        }
    }

    private static string Words(Accuracy accuracy)
    {
        var terms = string.Join(
            " + ",
            new[]
            {
                accuracy.Error is { } error ? $"{Whole(error.Text)} of reading" : null,
                accuracy.Digits is { } digits && accuracy.Step is { } step ? Whole($"{digits.Text} x {step.Text}") : null,
                accuracy.Fixed is { } add ? Whole(add.Text) : null,
            }.OfType<string>()
        );
        var measures = accuracy.Measures.Value switch
        {
            Measured.Esr => "ESR",
            Measured.LossFactor => "dissipation factor",
            _ => accuracy.Measures.Text.Replace('_', ' '),
        };
        return $"{measures}{(accuracy.UpTo is { } upTo ? $" up to {Whole(upTo.Text)}" : string.Empty)}: "
            + $"{terms}{(accuracy.Certificate is { } certificate ? $", certificate {Whole(certificate.Text)}" : string.Empty)}";
    }

    // A figure and its unit stay in one line: the column is narrow, on paper above all.
    private static string Whole(string figure) => figure.Replace(' ', '\u00A0');

    private static void Calibrated(HtmlWriter html, Instrument instrument, DateOnly today)
    {
        if (instrument.Calibrations.Length == 0)
        {
            html.Open(Tag.P).Text("no calibration on record");
            return;
        }

        var last = instrument.Calibrations.MaxBy(calibration => calibration.Date.Value)!;
        var until = CalibrationRules.Until(last);
        using (html.Open(Tag.P))
        {
            html.Text(
                $"calibrated {last.Date.Text}{(last.Certificate is { } certificate ? $" ({certificate.Value})" : string.Empty)}, next "
                    + $"by {IsoDate.Text(until)} "
            );
            html.Open(Tag.Span)
                .With(ClassName.Told, today > until ? ClassName.Bad : ClassName.Good)
                .Text(today > until ? "run out" : "holds");
        }

        if (instrument.Calibrations.Length > 1)
        {
            var before = instrument.Calibrations.Where(calibration => !ReferenceEquals(calibration, last));
            html.Open(Tag.P, ClassName.Fine).Text($"before: {string.Join(", ", before.Select(calibration => calibration.Date.Text))}");
        }
    }

    private static void Readings(HtmlWriter html, Instrument instrument, Use[] uses)
    {
        html.Text(string.Create(CultureInfo.InvariantCulture, $"{uses.Sum(use => use.Readings)}"));
        Use[] late =
        [
            .. uses.Where(use => CalibrationRules.Lapse(instrument, use.Day) is not null)
                .OrderBy(use => use.Day)
                .ThenBy(use => use.Board, StringComparer.Ordinal),
        ];
        if (late.Length == 0)
        {
            return;
        }

        using var line = html.Open(Tag.P);
        html.Open(Tag.Strong)
            .Text(string.Create(CultureInfo.InvariantCulture, $"{late.Sum(use => use.Readings)} while no calibration held"));
        html.Text(": ");
        for (var at = 0; at < Math.Min(late.Length, MostDays); at++)
        {
            html.Text(at == 0 ? string.Empty : ", ");
            if (late[at].Board is { } board)
            {
                html.Open(Tag.A, ClassName.Reference).To(LocalLink.ToFile(SiteAddress.Board(board))).Text(board);
            }
            else
            {
                html.Text("incoming");
            }

            html.Text(string.Create(CultureInfo.InvariantCulture, $" on {late[at].Day:yyyy-MM-dd} ({late[at].Readings})"));
        }

        if (late.Length > MostDays)
        {
            html.Text(string.Create(CultureInfo.InvariantCulture, $" and on {late.Length - MostDays} days more"));
        }
    }

    private readonly record struct Use(string? Board, DateOnly Day, int Readings);
}
