using System.Text;
using System.Text.Json.Nodes;
using Ohmstead.Records.Nodes;
using Ohmstead.Yaml;

namespace Ohmstead.Tests.Corpora;

/// <summary>
/// What the reader takes out of the YAML of a corpus, for another library to be held against: <c>tests/corpora.sh</c> asks for it by
/// OHMSTEAD_TEXTS, a file with a line for each text that was read without a word, and compares it (<c>tests/corpora.py</c>).
/// </summary>
public sealed class CorporaTextsTests
{
    [Fact]
    public void What_is_read_is_written_down_as_it_was_read()
    {
        var yaml = "a: 'it''s'\nb: [1, { c: \"x\\ny\" }]\nd: |\n  two\n  lines\n";
        var read = Read(Encoding.UTF8.GetBytes(yaml));
        Assert.Equal("""{"a":"it\u0027s","b":["1",{"c":"x\ny"}],"d":"two\nlines\n"}""", read?.ToJsonString());
        Assert.Null(Read("a: &x 1"u8.ToArray()));
        if (
            Environment.GetEnvironmentVariable("OHMSTEAD_CORPORA") is { Length: > 0 } folder
            && Environment.GetEnvironmentVariable("OHMSTEAD_TEXTS") is { Length: > 0 } file
        )
        {
            using var lines = new StreamWriter(file);
            var (read1, all) = (0, 0);
            foreach (var content in CorporaTests.FilesOf(folder).Distinct(StringComparer.Ordinal))
            {
                all++;
                if (Read(Encoding.UTF8.GetBytes(content)) is { } tree)
                {
                    read1++;
                    lines.WriteLine(new JsonObject { ["yaml"] = content, ["read"] = tree }.ToJsonString());
                }
            }

            TestContext.Current.TestOutputHelper?.WriteLine($"{read1} of {all} texts read");
        }
    }

    private static JsonNode? Read(byte[] yaml)
    {
        var reading = NodeReaders.ForWorker(0).Read("boards/SP-0001.md", yaml, FileForm.Yaml, ReadingLimits.Usual);
        return reading.Findings.Length > 0 || reading.Root is null ? null : Tree(reading.Root);
    }

    private static JsonNode Tree(Node node) =>
        node switch
        {
            MappingNode mapping => new JsonObject(
                mapping.Entries.Select(entry => KeyValuePair.Create(entry.Key, (JsonNode?)Tree(entry.Value)))
            ),
            SequenceNode list => new JsonArray([.. list.Items.Select(Tree)]),
            _ => JsonValue.Create(((ScalarNode)node).Text),
        };
}
