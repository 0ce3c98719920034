using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Sources;

/// <summary>
/// A line of code has 140 characters at most. The formatter breaks code there; it leaves comments and texts, which this looks at.
/// </summary>
public sealed class LineLengthTests
{
    private const int Most = 140;
    private const string Fence = "\"\"\"";

    [Fact]
    public void No_line_of_code_is_longer_than_a_line() =>
        Assert.Empty(
            new[] { "src", "tests" }
                .SelectMany(folder => Directory.EnumerateFiles(ProjectFolder.At(folder), "*.cs", SearchOption.AllDirectories))
                .Order(StringComparer.Ordinal)
                .SelectMany(file =>
                    TooLong(File.ReadLines(file)).Select(line => $"{Path.GetRelativePath(ProjectFolder.Root, file)}:{line}")
                )
        );

    // A text of a record within a test is as long as the record has it.
    [Fact]
    public void A_long_line_is_found_and_a_text_between_fences_is_not()
    {
        var (just, over) = (new string('x', Most), new string('µ', Most + 1));
        Assert.Equal([2, 6], TooLong([just, over, Fence, over, Fence, over]));
    }

    private static IEnumerable<int> TooLong(IEnumerable<string> lines)
    {
        var (number, isText) = (0, false);
        foreach (var line in lines)
        {
            number++;
            var wasText = isText;
            isText ^= (line.Split(Fence).Length - 1) % 2 == 1;
            if (line.Length > Most && !wasText)
            {
                yield return number;
            }
        }
    }
}
