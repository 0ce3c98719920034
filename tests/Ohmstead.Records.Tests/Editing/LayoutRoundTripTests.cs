using System.Globalization;
using System.Text;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Editing.Layout;
using Ohmstead.Records.Nodes;
using Ohmstead.Synthetic;
using Ohmstead.Synthetic.Files;
using Ohmstead.Synthetic.Text;
using Ohmstead.Yaml;

namespace Ohmstead.Records.Tests.Editing;

/// <summary>Lays out generated records with remarks and odd spaces everywhere. What is expected is what was generated before the spaces
/// came.</summary>
public sealed class LayoutRoundTripTests
{
    private static readonly int Usual = TestExtent.Times(usual: 60, all: 2_000);
    private static readonly int Records = int.TryParse(
        Environment.GetEnvironmentVariable("OHMSTEAD_RECORDS"),
        NumberStyles.None,
        CultureInfo.InvariantCulture,
        out var asked
    )
        ? asked
        : Usual;
    private static readonly CollectionPlan Plan = new(10_000, 20260314);

    [Fact]
    public void Records_laid_out_say_what_they_said_keep_every_remark_and_stay_as_they_are_the_second_time()
    {
        var next = 0;
        var wrong = new List<string>();
        var threads = Enumerable
            .Range(0, Math.Clamp(Environment.ProcessorCount, 1, 4))
            .Select(worker => new Thread(() =>
            {
                var reader = NodeReaders.ForWorker(worker);
                for (var number = Interlocked.Increment(ref next); number <= Records; number = Interlocked.Increment(ref next))
                {
                    if (Wrong(reader, number) is { } what)
                    {
                        lock (wrong)
                        {
                            wrong.Add($"record {number}: {what}");
                        }
                    }
                }
            }))
            .ToArray();
        Array.ForEach(threads, thread => thread.Start());
        Array.ForEach(threads, thread => thread.Join());
        Assert.Empty(wrong);
    }

    private static string? Wrong(INodeReader reader, int number)
    {
        var record = SyntheticCollection.Board(Plan, number);
        var (text, remarks) = Sprinkle.Over(record, SeededRandom.For(Plan.Seed, 9, number));
        var laid = RecordLayout.Compute("boards/a.md", text, FileForm.Markdown, reader);
        if (laid.State != LayoutState.Changed)
        {
            return $"{laid.State} {laid.Refusal?.Message}";
        }

        var (before, after) = (Read(reader, record), Read(reader, laid.Text));
        return !NodeTrail.Walk(before.Root!).SequenceEqual(NodeTrail.Walk(after.Root!)) ? "another value"
            : before.Body != after.Body.Replace("\r\n", "\n", StringComparison.Ordinal) ? "another body"
            : !HoldsInOrder(laid.Text, remarks) ? "a remark is lost"
            : RecordLayout.Compute("boards/a.md", laid.Text, FileForm.Markdown, reader).State != LayoutState.Tidy
                ? "not the same the second time"
            : null;
    }

    private static NodeReading Read(INodeReader reader, string text) =>
        reader.Read("boards/a.md", Encoding.UTF8.GetBytes(text), FileForm.Markdown, ReadingLimits.Usual);

    private static bool HoldsInOrder(string text, IReadOnlyList<string> remarks)
    {
        var lines = text[..text.LastIndexOf("\n---", StringComparison.Ordinal)].Split('\n');
        var at = 0;
        foreach (var remark in remarks)
        {
            while (at < lines.Length && !lines[at].TrimEnd('\r').EndsWith(remark, StringComparison.Ordinal))
            {
                at++;
            }

            if (at++ >= lines.Length)
            {
                return false;
            }
        }

        return true;
    }
}
