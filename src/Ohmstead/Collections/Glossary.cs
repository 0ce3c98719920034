using System.Text;

namespace Ohmstead.Collections;

/// <summary>A word of the glossary.</summary>
/// <param name="Names">How it is written, and its second names.</param>
/// <param name="Meaning">What it means here.</param>
internal sealed record GlossaryWord(IReadOnlyList<string> Names, string Meaning)
{
    /// <summary>The names as the page has them.</summary>
    public string Heading => string.Join(", ", Names);
}

/// <summary>The words of the records and of the program, from the page of the glossary, which is built in.</summary>
internal static class Glossary
{
    /// <summary>The name under which the page is built in.</summary>
    public const string Resource = "glossary";

    /// <summary>All words, in order of the page.</summary>
    public static IReadOnlyList<GlossaryWord> All()
    {
        using var stream = typeof(Glossary).Assembly.GetManifestResourceStream(Resource)!;
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return Parse(reader.ReadToEnd());
    }

    /// <summary>The word that has a name, whatever its capitals; null where none has it.</summary>
    public static GlossaryWord? Find(IReadOnlyList<GlossaryWord> words, string name) =>
        words.FirstOrDefault(word => word.Names.Contains(name, StringComparer.OrdinalIgnoreCase));

    /// <summary>The words of a page: a table of two columns, several names of one word behind commas.</summary>
    public static IReadOnlyList<GlossaryWord> Parse(string page) =>
        [
            .. page.Split('\n')
                .Select(line => line.Trim().Trim('|').Split('|', StringSplitOptions.TrimEntries))
                .Where(cells => cells is [{ Length: > 0 }, { Length: > 0 }])
                .Skip(2)
                .Select(cells => new GlossaryWord(cells[0].Split(", "), cells[1].Replace("`", string.Empty, StringComparison.Ordinal))),
        ];
}
