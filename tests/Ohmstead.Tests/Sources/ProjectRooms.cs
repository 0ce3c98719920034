using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Sources;

/// <summary>The folders of a project and which of them uses which, as the compiler understands the names in their files.</summary>
/// <remarks>
/// A folder is the way below the project, a folder inside another is a room of its own, and what lies beside the project file is one too.
/// A name counts where it is written: in code, not in comments, nor in a line that only opens a namespace.
/// </remarks>
internal sealed class ProjectRooms
{
    /// <summary>The folder of the project itself.</summary>
    public const string Root = "(project)";

    // What the SDK opens for every file.
    private const string Opened = """
        global using System;
        global using System.Collections.Generic;
        global using System.IO;
        global using System.Linq;
        global using System.Net.Http;
        global using System.Threading;
        global using System.Threading.Tasks;
        """;

    private static readonly CSharpParseOptions Options = new(LanguageVersion.Preview, DocumentationMode.None);

    // What the tests run with is what each project was built with, and a little more.
    private static readonly IReadOnlyList<PortableExecutableReference> References =
    [
        .. ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!)
            .Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries)
            .Select(file => MetadataReference.CreateFromFile(file)),
    ];

    private ProjectRooms(string project, IReadOnlyList<string> rooms, IReadOnlyList<RoomArrow> arrows, IReadOnlyList<string> unknown) =>
        (Project, Rooms, Arrows, Unknown) = (project, rooms, arrows, unknown);

    /// <summary>The name of the project.</summary>
    public string Project { get; }

    /// <summary>Its folders with code in them, in order of name.</summary>
    public IReadOnlyList<string> Rooms { get; }

    /// <summary>Which folder uses which: one arrow, the first that was met, for each pair.</summary>
    public IReadOnlyList<RoomArrow> Arrows { get; }

    /// <summary>Names that mean nothing to the compiler: with them, an arrow would be missed.</summary>
    public IReadOnlyList<string> Unknown { get; }

    /// <summary>The rooms of a project below src.</summary>
    public static ProjectRooms Read(string project)
    {
        var folder = ProjectFolder.At(Path.Combine("src", project));
        return Of(
            project,
            Directory
                .EnumerateFiles(folder, "*.cs", SearchOption.AllDirectories)
                .Select(file => (Path.GetRelativePath(folder, file).Replace('\\', '/'), File.ReadAllText(file)))
                .Where(file => !file.Item1.StartsWith("bin/", StringComparison.Ordinal))
                .Where(file => !file.Item1.StartsWith("obj/", StringComparison.Ordinal))
        );
    }

    /// <summary>The rooms of files, each with its way below the project.</summary>
    public static ProjectRooms Of(string project, IEnumerable<(string Path, string Text)> files)
    {
        var trees = files
            .OrderBy(file => file.Path, StringComparer.Ordinal)
            .AsParallel()
            .AsOrdered()
            .Select(file => CSharpSyntaxTree.ParseText(file.Text, Options, file.Path))
            .ToList();
        var compilation = CSharpCompilation.Create(
            project,
            trees.Append(CSharpSyntaxTree.ParseText(Opened, Options)),
            ReferencesOf(project),
            new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary, allowUnsafe: true)
        );
        var read = trees.AsParallel().AsOrdered().Select(tree => Look(compilation.GetSemanticModel(tree))).ToList();
        return new ProjectRooms(
            project,
            [.. trees.Select(tree => RoomOf(tree.FilePath)).Distinct().Order(StringComparer.Ordinal)],
            [
                .. read.SelectMany(one => one.Arrows)
                    .DistinctBy(arrow => (arrow.From, arrow.To))
                    .OrderBy(arrow => arrow.From, StringComparer.Ordinal)
                    .ThenBy(arrow => arrow.To, StringComparer.Ordinal),
            ],
            [.. read.SelectMany(one => one.Unknown)]
        );
    }

    private static IEnumerable<MetadataReference> ReferencesOf(string project) =>
        References.Where(one => !Path.GetFileNameWithoutExtension(one.FilePath!).Equals(project, StringComparison.OrdinalIgnoreCase));

    private static (List<RoomArrow> Arrows, List<string> Unknown) Look(SemanticModel model)
    {
        var (arrows, unknown) = (new List<RoomArrow>(), new List<string>());
        var file = model.SyntaxTree.FilePath;
        var from = RoomOf(file);
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (
            var name in model.SyntaxTree.GetRoot().DescendantNodes(node => node is not UsingDirectiveSyntax).OfType<SimpleNameSyntax>()
        )
        {
            if (name is IdentifierNameSyntax { IsVar: true })
            {
                continue;
            }

            var line = name.GetLocation().GetLineSpan().StartLinePosition.Line + 1;
            var found = model.GetSymbolInfo(name);
            if ((found.Symbol ?? found.CandidateSymbols.FirstOrDefault()) is not { } symbol)
            {
                if (name.Identifier.ValueText is not ("nameof" or "notnull"))
                {
                    unknown.Add($"{file}:{line}: {name.Identifier.ValueText}");
                }
            }
            else if (Home(symbol) is { } home && home.Rooms.Count > 0 && !home.Rooms.Contains(from) && seen.Add(home.Rooms[0]))
            {
                arrows.Add(new RoomArrow(from, home.Rooms[0], Path.GetFileName(file), line, home.Type));
            }
        }

        return (arrows, unknown);
    }

    // The folders that a type or a member is written in: more than one where a type has parts in several.
    private static (string Type, IReadOnlyList<string> Rooms)? Home(ISymbol symbol)
    {
        if (symbol is IMethodSymbol { ReducedFrom: { } extension })
        {
            symbol = extension;
        }

        if (symbol is not (INamedTypeSymbol or IMethodSymbol or IPropertySymbol or IFieldSymbol or IEventSymbol))
        {
            return null;
        }

        symbol = symbol.OriginalDefinition;
        // What the compiler adds to a record stands where the record does.
        var written = symbol.DeclaringSyntaxReferences.Length > 0 ? symbol : symbol.ContainingType;
        return written is null
            ? null
            : (
                (symbol as INamedTypeSymbol ?? symbol.ContainingType)?.Name ?? symbol.Name,
                [
                    .. written
                        .DeclaringSyntaxReferences.Select(place => RoomOf(place.SyntaxTree.FilePath))
                        .Distinct()
                        .Order(StringComparer.Ordinal),
                ]
            );
    }

    private static string RoomOf(string path) => path.LastIndexOf('/') is > 0 and var end ? path[..end] : Root;
}
