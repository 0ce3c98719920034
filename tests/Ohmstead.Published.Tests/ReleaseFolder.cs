using System.Text.Json.Nodes;
using Ohmstead.Tests.Support;

namespace Ohmstead.Published.Tests;

/// <summary>A repository with what makes a release: the scripts, the version, the changelog, the licences. Programs are put there by the
/// tests, and the SDK is a script that answers "publish" and "pack".</summary>
internal sealed class ReleaseFolder : IDisposable
{
    /// <summary>The machines of which a release has an archive.</summary>
    public static IReadOnlyList<string> Machines { get; } = File.ReadAllLines(ProjectFolder.At(".github/release/machines"));

    // publish: what BUILT holds; pack: a file that is called so.
    private const string Sdk = """
        #!/bin/sh
        for word; do to=$word; done
        mkdir -p "$to"
        case $1 in
          publish) cp "$BUILT"/* "$to"; mkdir -p artifacts/publish; cp "$LOCK" "artifacts/publish/$(echo "$*" | sed 's/.*PublishFor=\([^ ]*\).*/\1/').lock.json" ;;
          pack) echo package > "$to/ohmstead.0.1.0.nupkg" ;;
          *) exit 9 ;;
        esac

        """;

    private readonly ScratchRepository repository = ScratchRepository.Empty();

    public ReleaseFolder()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "runs the steps with bash");
        foreach (
            var path in Directory
                .EnumerateFiles(ProjectFolder.At(".github/release"))
                .Select(file => ".github/release/" + Path.GetFileName(file))
                .Concat(["CHANGELOG.md", "Directory.Build.props", "LICENSE"])
        )
        {
            repository.Write(path, string.Empty);
            File.Copy(ProjectFolder.At(path), At(path), overwrite: true);
        }

        repository.Write("bin/dotnet", Sdk);
        Executable("bin/dotnet");
        repository.Commit("to be released");
        Commit = repository.Git("rev-parse", "HEAD").Trim();
    }

    /// <summary>The commit that is released.</summary>
    public string Commit { get; }

    /// <summary>The absolute path of a file or folder in it.</summary>
    public string At(string path) => repository.At(path);

    /// <summary>Changes words of a file that holds them once.</summary>
    public void Replace(string path, string old, string @new) => repository.Replace(path, old, @new);

    /// <summary>Writes a file.</summary>
    public void Write(string path, string text) => repository.Write(path, text);

    /// <summary>Puts an invented program of each machine there: files that begin as they do on it.</summary>
    public void PutPrograms()
    {
        foreach (var machine in Machines)
        {
            var folder = $"programs/program-{machine}";
            var (program, pictures) = machine.Split('-')[0] switch
            {
                "win" => ("ohmstead.exe", "libSkiaSharp.dll"),
                "osx" => ("ohmstead", "libSkiaSharp.dylib"),
                _ => ("ohmstead", "libSkiaSharp.so"),
            };
            repository.Write($"{folder}/program/{program}", string.Empty);
            File.WriteAllBytes(At($"{folder}/program/{program}"), Begins(machine));
            File.WriteAllBytes(At($"{folder}/program/{pictures}"), machine == "osx-arm64" ? [0xca, 0xfe, 0xba, 0xbe] : Begins(machine));
            repository.Write($"{folder}/licences/dotnet.txt", "of the runtime\n");
            repository.Write($"{folder}/licences/skiasharp.txt", "of the pictures\n");
            repository.Write($"{folder}/packages.lock.json", LockOf(machine));
        }
    }

    /// <summary>Lets a file of it be run.</summary>
    public void Executable(string path)
    {
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(At(path), UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }

    /// <summary>Runs a line of shell in the repository. What it prints is told without its own folder.</summary>
    public Task<Run> RunAsync(string line, params (string Name, string Value)[] environment) =>
        Child.ShellAsync(
            line,
            repository.Root,
            [
                ("PATH", $"{At("bin")}:{Environment.GetEnvironmentVariable("PATH")}"),
                ("commit", Commit),
                ("machines", string.Join(' ', Machines)),
                .. environment,
            ]
        );

    /// <summary>The programs become the files of a release.</summary>
    public async Task MakeAsync(string to)
    {
        var made = await RunAsync($".github/release/files.sh programs \"$commit\" {to}");
        Assert.True(made.Exit == 0, made.Out + made.Error);
    }

    /// <inheritdoc/>
    public void Dispose() => repository.Dispose();

    // The lock file of this machine as it would be on another.
    private static string LockOf(string machine)
    {
        var locked = JsonNode.Parse(File.ReadAllText(Lock))!;
        var dependencies = locked["dependencies"]!.AsObject();
        var own = dependencies.Single(entry => entry.Key.Contains('/', StringComparison.Ordinal));
        var text = own.Value!.ToJsonString();
        var here = own.Key.Split('/')[1];
        dependencies.Remove(own.Key);
        dependencies[own.Key.Replace(here, machine, StringComparison.Ordinal)] = JsonNode.Parse(
            text.Replace(here, machine, StringComparison.Ordinal)
        );
        return locked.ToJsonString();
    }

    /// <summary>The lock file with which the program of the tests was published.</summary>
    public static string Lock => Assert.Single(Directory.GetFiles(ProjectFolder.At("artifacts/published/publish"), "*.lock.json"));

    // The first bytes that the system of a machine looks at.
    private static byte[] Begins(string machine) =>
        machine.Split('-') switch
        {
            ["win", ..] => "MZ"u8.ToArray(),
            ["osx", ..] => [0xcf, 0xfa, 0xed, 0xfe, 0x0c, 0, 0, 0x01],
            [.., var processor] => [0x7f, .. "ELF"u8, 2, 1, 1, .. new byte[9], 3, 0, (byte)(processor == "x64" ? 0x3e : 0xb7), 0],
            _ => [],
        };
}
