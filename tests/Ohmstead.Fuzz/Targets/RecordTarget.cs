using System.Text;
using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.Obligations;
using Ohmstead.Assessment.Obligations.Basis;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Pages;
using Ohmstead.Yaml;

namespace Ohmstead.Fuzz.Targets;

/// <summary>A board is read, judged and written as a page. A record with an error in it is never fit to run, and no control byte gets
/// out.</summary>
internal static class RecordTarget
{
    private static readonly DateOnly Today = new(2026, 11, 25);

    public static void Try(byte[] input)
    {
        var reading = NodeReaders.ForWorker(0).Read("boards/X-1.md", input, FileForm.Markdown, ReadingLimits.Usual);
        var read = FileBinding.Board("boards/X-1.md", reading);
        if (read.File is not { } board)
        {
            FaultFoundException.Unless(read.Findings.Length > 0, "a record was not read and nobody says why");
            return;
        }

        var judged = new BoardJudge(Workshop.Empty, SharedFaults.None, Today, new NoPictures()).Judge(board, read.Findings);
        var hasError = judged.Reported.Any(finding => finding.Severity == Severity.Error);
        FaultFoundException.Unless(
            !hasError || judged.State != Ohmstead.Assessment.History.BoardState.FitToRun,
            "fit to run with an error in the record"
        );
        using var buffer = new PageBuffer();
        BoardPage.Write(buffer, new ReportContext(Workshop.Empty, new HashSet<string>(StringComparer.Ordinal), Today, "0.0.0"), judged);
        var page = Encoding.UTF8.GetString(buffer.Written);
        Bytes.AreHarmless(page, "the page");
        FaultFoundException.Unless(page.Split("<script").Length <= 2, "a second script stands in the page");
    }

    private sealed class NoPictures : IPictures
    {
        public PictureState At(string path) => PictureState.Present;

        public IEnumerable<string> NamesInFolder(string path) => [];

        public PictureFault? Fault(string path) => null;
    }
}
