using System.Globalization;
using System.Text.RegularExpressions;
using Ohmstead.Tests.Support;

namespace Ohmstead.History.Tests.Comparing;

/// <summary>Edits of a collection as an editor, a merge or a slip makes them; the same from run to run.</summary>
/// <param name="seed">Which.</param>
internal sealed partial class Edits(int seed)
{
#pragma warning disable CA5394 // Reproducible edits need no secrecy.
    private readonly Random random = new(seed);

    /// <summary>Whether an entry was taken out or put in, so that its twins are counted otherwise.</summary>
    public bool HasMoved { get; private set; }

    /// <summary>Makes one to three of them.</summary>
    public void Make(CollectionCopy copy)
    {
        for (var left = random.Next(1, 4); left > 0; left--)
        {
            One(copy);
        }
    }

    private void One(CollectionCopy copy)
    {
        string[] files =
        [
            .. Directory.EnumerateFiles(copy.At("boards"), "*.md").Order(StringComparer.Ordinal),
            .. Directory.EnumerateFiles(copy.At("designs"), "*.md").Order(StringComparer.Ordinal),
            copy.At("stock.yaml"),
            copy.At("instruments.yaml"),
            copy.At("collection.yaml"),
        ];
        var file = files[random.Next(files.Length)];
        var lines = File.ReadAllText(file).Split('\n');
        var at = random.Next(2, lines.Length);
        switch (random.Next(8))
        {
            case 0:
                // An entry is gone, where the line holds a whole one.
                if (lines[at].TrimStart().StartsWith("- {", StringComparison.Ordinal) && lines[at].TrimEnd().EndsWith('}'))
                {
                    lines = [.. lines[..at], .. lines[(at + 1)..]];
                    HasMoved = true;
                }

                break;
            case 1:
                if (lines[at].TrimStart().StartsWith("- {", StringComparison.Ordinal) && lines[at].TrimEnd().EndsWith('}'))
                {
                    lines = [.. lines[..at], lines[at], .. lines[at..]];
                    HasMoved = true;
                }

                break;
            case 2:
                File.Move(file, Path.Combine(Path.GetDirectoryName(file)!, $"moved-{seed}-{random.Next()}.md"));
                return;
            case 3:
                lines[at] = lines[at].Replace("circuit: out", "circuit: in", StringComparison.Ordinal);
                break;
            default:
                // Another figure, from the next line on that has one.
                var figure = Enumerable.Range(at, lines.Length - at).FirstOrDefault(line => Figure().IsMatch(lines[line]), -1);
                if (figure >= 0)
                {
                    var matches = Figure().Matches(lines[figure]);
                    var match = matches[random.Next(matches.Count)];
                    lines[figure] = lines[figure][..match.Index] + Other(match.Value) + lines[figure][(match.Index + match.Length)..];
                }

                break;
        }

        File.WriteAllText(file, string.Join('\n', lines));
    }

    private string Other(string figure) =>
        random.Next(3) switch
        {
            0 => (decimal.Parse(figure, CultureInfo.InvariantCulture) * 1.1m).ToString("0.##", CultureInfo.InvariantCulture),
            1 => (decimal.Parse(figure, CultureInfo.InvariantCulture) * 0.5m).ToString("0.##", CultureInfo.InvariantCulture),
            _ => "1" + figure,
        };
#pragma warning restore CA5394

    // A figure with a unit or alone behind a key; no part of a name or a day.
    [GeneratedRegex(@"(?<=: |±)\d+(\.\d+)?(?= |,|\})")]
    private static partial Regex Figure();
}
