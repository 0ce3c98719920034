using System.Text;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Records.Tests.Schemas;

/// <summary>The page of all keys, written from the shapes. OHMSTEAD_WRITE=1 writes it.</summary>
public sealed class KeysPageTests
{
    // Longer lists of words stand under the table.
    private const int FewWords = 6;

    [Fact]
    public void The_page_of_keys_is_the_one_that_the_shapes_give()
    {
        var file = Path.Combine(Repository.Root, "schema", "KEYS.md");
        var current = Page();
        if (Environment.GetEnvironmentVariable("OHMSTEAD_WRITE") == "1")
        {
            File.WriteAllText(file, current);
        }

        Assert.True(
            File.Exists(file) && File.ReadAllText(file) == current,
            "schema/KEYS.md is not current; write it with: OHMSTEAD_WRITE=1 dotnet run --project tests/Ohmstead.Records.Tests"
        );
    }

    // That each example is read without a finding, ShapesAndSchemasTests shows.
    [Fact]
    public void Every_key_has_an_example_and_a_sentence() => Assert.All(Mappings().SelectMany(mapping => mapping.Shape.Keys), key =>
        {
            Assert.False(string.IsNullOrWhiteSpace(key.Example), key.Name);
            Assert.EndsWith(".", key.Description, StringComparison.Ordinal);
        });

    private static string Page()
    {
        var page = new StringBuilder(
            """
            # All keys of all files

            Written by the tests from `src/Ohmstead.Records/Shapes`; OHMSTEAD_WRITE=1 writes it anew. Each example is read in the tests without a finding.
            [README.md](README.md) tells how values are written, [the guide](../records/README.md) when to write what.

            """
        );
        foreach (var file in Mappings().GroupBy(mapping => mapping.File))
        {
            page.Append($"\n## {file.Key}\n");
            foreach (var (_, way, shape) in file)
            {
                Write(page, way, shape);
            }
        }

        return page.ToString().ReplaceLineEndings("\n");
    }

    private static void Write(StringBuilder page, string way, Shape shape)
    {
        page.Append($"\n### {(way.Length == 0 ? "The file itself" : $"`{way}`")}\n\n{shape.Description}\n");
        if (way.Length > 0)
        {
            page.Append($"\n```yaml\n{shape.Example}\n```\n");
        }

        page.Append("\n| Key | What it says | Example |\n|---|---|---|\n");
        foreach (var key in shape.Keys)
        {
            var needed = key.IsNeeded ? " *Needed.*" : string.Empty;
            var words = key.Words.Count is > 1 and <= FewWords ? $" One of: {string.Join(", ", key.Words)}." : string.Empty;
            page.Append(
                $"| `{key.Name}` | {key.Description}{words}{needed} | `{key.Example.Replace("|", "\\|", StringComparison.Ordinal)}` |\n"
            );
        }

        foreach (var key in shape.Keys.Where(key => key.Words.Count > FewWords))
        {
            page.Append($"\nWords of `{key.Name}`: {string.Join(", ", key.Words)}.\n");
        }
    }

    // Each mapping once in each file, in the order in which it is met.
    private static IEnumerable<(string File, string Way, Shape Shape)> Mappings() =>
        FileShapes.All.SelectMany(file =>
            Below(file.Shape, string.Empty).DistinctBy(one => one.Shape).Select(one => (file.SchemaName, one.Way, one.Shape))
        );

    private static IEnumerable<(string Way, Shape Shape)> Below(Shape shape, string way) =>
        shape
            .Keys.Where(key => key.Inner is not null)
            .SelectMany(key => Below(key.Inner!, way.Length == 0 ? key.Name : $"{way}: {key.Name}"))
            .Prepend((way, shape));
}
