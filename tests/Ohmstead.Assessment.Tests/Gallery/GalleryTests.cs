using System.Text;
using Ohmstead.Assessment.Checks;
using Ohmstead.Assessment.Tests.Support;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Tests.Gallery;

/// <summary>Every message that the cases provoke, in one file to be read by a person. OHMSTEAD_WRITE=1 writes it.</summary>
public sealed class GalleryTests
{
    private static readonly IReadOnlyList<(RecordCase Case, Finding Finding)> Messages =
    [
        .. RecordCase.All.SelectMany(one => new SmallCollection(one.Blocks).Findings().Select(finding => (one, finding))),
    ];

    [Fact]
    public void The_gallery_shows_every_message_as_it_is_now()
    {
        var path = Path.Combine(Root(), "tests", "Ohmstead.Assessment.Tests", "Gallery", "messages.md");
        var gallery = Text();
        if (Environment.GetEnvironmentVariable("OHMSTEAD_WRITE") == "1")
        {
            File.WriteAllText(path, gallery);
        }

        Assert.True(
            File.ReadAllText(path) == gallery,
            "Gallery/messages.md is not current; write it with: OHMSTEAD_WRITE=1 dotnet run --project tests/Ohmstead.Assessment.Tests, "
                + "and read the change"
        );
    }

    [Fact]
    public void Every_message_starts_small_and_has_no_full_stop() =>
        Assert.All(Messages, message => MessageRules.Hold(message.Finding.Message));

    [Fact]
    public void Every_message_has_a_next_step_that_starts_small_and_has_no_full_stop() => Assert.All(Messages, message =>
        {
            Assert.NotNull(message.Finding.NextStep);
            MessageRules.Hold(message.Finding.NextStep);
        });

    private static string Text()
    {
        var text = new StringBuilder("# Messages\n\nWritten by the tests from the cases of the checks; OHMSTEAD_WRITE=1 writes it anew.\n");
        foreach (var check in CheckCatalogue.Descriptions)
        {
            text.Append('\n').Append("## ").Append(check.Name).Append("\n\n");
            foreach (
                var (one, finding) in Messages
                    .Where(message => message.Finding.Check == check.Name)
                    .DistinctBy(message => message.Finding.Message, StringComparer.Ordinal)
            )
            {
                var line = one.Blocks.First(block => block.Path == finding.Place.Path).LineWithoutMark(finding.Place.Line);
                text.Append("    ")
                    .Append(line)
                    .Append('\n')
                    .Append("    ")
                    .Append(Words(finding.Severity))
                    .Append(": ")
                    .Append(finding.Message)
                    .Append('\n')
                    .Append("    next: ")
                    .Append(finding.NextStep)
                    .Append("\n\n");
            }

            text.Length--;
        }

        return text.ToString();
    }

    private static string Words(Severity severity) =>
        severity switch
        {
            Severity.Error => "error",
            Severity.Warning => "warning",
            _ => "note",
        };

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Ohmstead.slnx")))
        {
            folder = folder.Parent ?? throw new InvalidOperationException("Ohmstead.slnx is in no folder above the tests");
        }

        return folder.FullName;
    }
}
