using System.Text;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.Obligations;
using Ohmstead.Assessment.Obligations.Basis;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Model;
using Ohmstead.Records.Nodes;
using Ohmstead.Yaml;

namespace Ohmstead.Report.Tests.Pages;

/// <summary>Boards judged as the program judges them, from the text of their records.</summary>
internal static class Judged
{
    public static DateOnly Today { get; } = new(2026, 11, 25);

    /// <summary>A board that was read already.</summary>
    public static JudgedBoard Board(BoardFile board, Workshop workshop, DateOnly? today = null) =>
        new BoardJudge(workshop, SharedFaults.None, today ?? Today, new AllThere()).Judge(board, []);

    /// <summary>A board, from a record in which nothing is wrong to read.</summary>
    public static JudgedBoard Board(string record, Workshop? workshop = null, DateOnly? today = null, string path = "boards/X-1.md")
    {
        var read = FileBinding.Board(
            path,
            new YamlNodeReader().Read(path, Encoding.UTF8.GetBytes(record), FileForm.Markdown, ReadingLimits.Usual)
        );
        Assert.Empty(read.Findings);
        return Board(read.File!, workshop ?? Workshop.Empty, today);
    }

    /// <summary>A workshop with nothing but how often boards are looked at.</summary>
    public static Workshop LookEvery(string often)
    {
        var read = FileBinding.Collection(
            "collection.yaml",
            new YamlNodeReader().Read(
                "collection.yaml",
                Encoding.UTF8.GetBytes($"collection: Fog signals\nlook_every: {often}\n"),
                FileForm.Yaml,
                ReadingLimits.Usual
            )
        );
        Assert.Empty(read.Findings);
        return new Workshop(read.File!, null, null, []);
    }

    private sealed class AllThere : IPictures
    {
        public PictureState At(string path) => PictureState.Present;

        public IEnumerable<string> NamesInFolder(string path) => [];

        public PictureFault? Fault(string path) => null;
    }
}
