using System.Text.RegularExpressions;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.FitToRun;

/// <summary>A board of the gallery: a small collection, and whether its board may be called fit to run.</summary>
/// <param name="Group">The file it stands in, without its ending.</param>
/// <param name="Why">The heading: one sentence that says what the record holds.</param>
/// <param name="IsFit">Whether the board is fit to run.</param>
/// <param name="State">The state that the board must have, or null where any other than fit to run will do.</param>
/// <param name="Because">The place that one of the reasons must name, or null.</param>
/// <param name="Blocks">The files of the collection, the shared ones of the group included.</param>
internal sealed partial record GalleryBoard(
    string Group,
    string Why,
    bool IsFit,
    BoardState? State,
    string? Because,
    IReadOnlyList<CaseBlock> Blocks
)
{
    /// <summary>All boards, in order of file and place.</summary>
    internal static IReadOnlyList<GalleryBoard> All { get; } =
    [
        .. Directory
            .GetFiles(Path.Combine(AppContext.BaseDirectory, "FitToRun"), "*.md")
            .Order(StringComparer.Ordinal)
            .SelectMany(path => Read(Path.GetFileNameWithoutExtension(path), File.ReadAllText(path))),
    ];

    /// <summary>The boards of one file. What stands in blocks before the first board is shared by all that bring no file of that
    /// path.</summary>
    internal static IReadOnlyList<GalleryBoard> Read(string group, string text)
    {
        var first = text.IndexOf("\n## ", StringComparison.Ordinal) + 1;
        var before = text[..first];
        // Blocks ahead of the first heading have no case of their own: a heading that is put in front gives them one.
        var shared = RecordCase
            .Read(group, "## shared\n" + before)
            .Single()
            .Blocks.Select(block => block with { LineBefore = block.LineBefore - 1 })
            .ToArray();
        var linesBefore = before.Count(character => character == '\n');
        return
        [
            .. RecordCase
                .Read(group, text[first..])
                .Zip(Sentences(text[first..]), (one, sentence) => Of(group, one, sentence, shared, linesBefore)),
        ];
    }

    private static GalleryBoard Of(string group, RecordCase one, string sentence, CaseBlock[] shared, int linesBefore)
    {
        var match = Sentence().Match(sentence);
        Assert.True(
            match.Success,
            $"FitToRun/{group}.md, '{one.Name}': '{sentence}' is no sentence of the gallery, write 'Not fit to run: a fault stands "
                + "because C1.'"
        );
        CaseBlock[] own = [.. one.Blocks.Select(block => block with { LineBefore = block.LineBefore + linesBefore })];
        return new(
            group,
            one.Name,
            match.Groups["fit"].Value == "Fit",
            match.Groups["state"] is { Success: true } state ? StateCalled(state.Value) : null,
            match.Groups["place"] is { Success: true } place ? place.Value : null,
            [.. own, .. shared.Where(block => own.All(mine => mine.Path != block.Path))]
        );
    }

    private static BoardState StateCalled(string words)
    {
        var states = BoardStates.All.Where(state => BoardStates.Words(state) == words).ToArray();
        Assert.True(states.Length == 1, $"'{words}' is no state of a board");
        return states[0];
    }

    // The first line below each heading that says anything.
    private static IEnumerable<string> Sentences(string text) =>
        text.Split("\n## ").Select(part => part.Split('\n').Skip(1).FirstOrDefault(line => line.Trim().Length > 0) ?? string.Empty);

    [GeneratedRegex("^(?<fit>Not fit|Fit) to run(: (?<state>[a-z ]+?))?( because (?<place>\\S+))?\\.$", RegexOptions.ExplicitCapture)]
    private static partial Regex Sentence();
}
