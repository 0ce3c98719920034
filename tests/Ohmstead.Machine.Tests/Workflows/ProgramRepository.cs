using Ohmstead.Tests.Support;

namespace Ohmstead.Machine.Tests.Workflows;

/// <summary>A repository with what workflows take of the program's own: its actions, the project that is built, and its SDK.</summary>
internal static class ProgramRepository
{
    public const string Name = "saltmarsh/ohmstead";

    /// <summary>The actions, by their folder.</summary>
    public static IReadOnlyList<string> Actions { get; } =
    [
        .. Directory
            .GetDirectories(ProjectFolder.At(".github/actions"))
            .Select(folder => Path.GetFileName(folder)!)
            .Order(StringComparer.Ordinal),
    ];

    public static ScratchRepository Make()
    {
        var repository = ScratchRepository.Empty();
        Put(repository);
        repository.Commit("program");
        return repository;
    }

    /// <summary>Copies it into a repository, programs as programs.</summary>
    public static void Put(ScratchRepository repository)
    {
        var actions = Directory
            .EnumerateFiles(ProjectFolder.At(".github/actions"), "*", SearchOption.AllDirectories)
            .Select(file => Path.GetRelativePath(ProjectFolder.At("."), file));
        foreach (var path in actions.Concat(["global.json", "src/Ohmstead/Ohmstead.csproj"]))
        {
            var target = Path.Combine(repository.Root, path);
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(ProjectFolder.At(path), target);
        }
    }
}
