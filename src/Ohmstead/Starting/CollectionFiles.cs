using Ohmstead.Electronics;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Schemas;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Starting;

/// <summary>A file that a new collection begins with.</summary>
/// <param name="Path">The path from the root of the collection.</param>
/// <param name="Text">What it holds.</param>
/// <param name="IsProgram">True for what the system must be allowed to run.</param>
internal sealed record StartingFile(string Path, string Text, bool IsProgram = false);

/// <summary>The files a collection begins with: records that are valid as they stand, their schemas, and what editors and Git need to
/// know.</summary>
internal static class CollectionFiles
{
    /// <summary>What a repository looks for at its own root; left out where the collection lies inside a repository.</summary>
    /// <param name="workflows">What its host is to do; null for a hook alone.</param>
    public static IReadOnlyList<StartingFile> OfRepository(HostedCollection? workflows) =>
        [new(".githooks/pre-commit", Template("pre-commit"), IsProgram: true), .. workflows is null ? [] : Workflows(workflows)];

    private static IEnumerable<StartingFile> Workflows(HostedCollection wanted) =>
        new[] { "collection.yml", wanted.HasPages ? "pages.yml" : null, wanted.HasComments ? "comments.yml" : null }
            .OfType<string>()
            .Select(file => new StartingFile(
                ".github/workflows/" + file,
                Template(file)
                    .Replace("{{program}}", wanted.Program.Repository, StringComparison.Ordinal)
                    .Replace("{{revision}}", wanted.Program.Revision, StringComparison.Ordinal)
                    .Replace("{{obtained}}", wanted.Release?.AsInputs ?? "from-source: true", StringComparison.Ordinal)
                    .Replace("{{branch}}", FlowText.Scalar(wanted.Branch), StringComparison.Ordinal)
            ));

    /// <summary>Everything else.</summary>
    /// <param name="name">The name of the collection.</param>
    /// <param name="board">The number of the first board, or null where boards are there already.</param>
    /// <param name="today">The day it came.</param>
    /// <param name="hasSchemas">True to put the schemas beside the records, and to name them to editors.</param>
    public static IReadOnlyList<StartingFile> List(string name, string? board, DateOnly today, bool hasSchemas)
    {
        var files = Records(name, board, today);
        return hasSchemas
            ? [.. files, .. Schemas("schema/"), new(".vscode/settings.json", Template("editor-settings.json"))]
            : [.. files.Select(file => file with { Text = WithoutSchema(file.Text) })];
    }

    /// <summary>The schemas of all records.</summary>
    /// <param name="folder">The folder in front of their names; empty, or with a slash behind it.</param>
    public static IEnumerable<StartingFile> Schemas(string folder) =>
        FileShapes.All.Select(file => new StartingFile(folder + SchemaFiles.FileName(file.SchemaName), SchemaFiles.Read(file.SchemaName)));

    /// <summary>The settings by which editors find the schemas at a place: each schema and the files that it is of, a line each.</summary>
    /// <param name="place">What stands in front of the name of each schema.</param>
    public static IEnumerable<string> SettingsFor(string place) =>
        Template("editor-settings.json")
            .Split('\n')
            .Where(line => line.Contains("./schema/", StringComparison.Ordinal))
            .Select(line => line.Trim().Replace("./schema/", place, StringComparison.Ordinal));

    // Where no schema lies beside the records, no line names one.
    private static string WithoutSchema(string text) =>
        string.Join('\n', text.Split('\n').Where(line => !line.StartsWith("# yaml-language-server: ", StringComparison.Ordinal)));

    private static IReadOnlyList<StartingFile> Records(string name, string? board, DateOnly today) =>
        [
            new("collection.yaml", Template("collection.yaml").Replace("{{name}}", FlowText.Scalar(name), StringComparison.Ordinal)),
            new("instruments.yaml", Template("instruments.yaml")),
            new("stock.yaml", Template("stock.yaml")),
            .. board is null ? [] : new[] { new StartingFile($"boards/{board}.md", FirstBoard(board, today)) },
            new(".gitattributes", Template("gitattributes")),
            new(".gitignore", Template("gitignore")),
        ];

    /// <summary>The number of a first board: the initials of the first two words of the name, and 0001.</summary>
    public static string FirstNumber(string name)
    {
        var initials = string.Concat(
                name.Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
                    .Select(word => word[0])
                    .Where(char.IsAsciiLetter)
                    .Take(2)
            )
            .ToUpperInvariant();
        return (initials.Length == 0 ? "B" : initials) + "-0001";
    }

    private static string FirstBoard(string board, DateOnly today) =>
        Template("board.record")
            .Replace("{{board}}", board, StringComparison.Ordinal)
            .Replace("{{date}}", IsoDate.Text(today), StringComparison.Ordinal);

    private static string Template(string name)
    {
        using var stream = typeof(CollectionFiles).Assembly.GetManifestResourceStream("start/" + name)!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
