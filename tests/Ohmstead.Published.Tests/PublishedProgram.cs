using System.Diagnostics;
using System.Runtime.InteropServices;
using Ohmstead.Published.Tests;
using Ohmstead.Tests.Support;

[assembly: AssemblyFixture(typeof(PublishedProgram))]

namespace Ohmstead.Published.Tests;

/// <summary>
/// The program as a person publishes it for their machine, made once for all tests, when they are asked for: it takes minutes, and mostly
/// a linker. What it is made from is kept under artifacts, so that the next time only what changed is made.
/// </summary>
public sealed class PublishedProgram : IAsyncLifetime
{
    private readonly string folder = Directory.CreateTempSubdirectory("ohmstead-published-").FullName;
    private string? refused;
    private int tellers;

    /// <summary>
    /// The path of the program. Whoever asks is skipped where it is not to be published; where it could not be, the first is told why.
    /// </summary>
    public string Path
    {
        get
        {
            Assert.SkipUnless(TestExtent.IsAll, TestExtent.LeftOut);
            Assert.SkipWhen(
                refused is not null && Interlocked.Increment(ref tellers) > 1,
                "the program could not be published, as one test tells that failed"
            );
            Assert.True(refused is null, refused);
            return Program;
        }
    }

    /// <summary>The files that a person gets.</summary>
    public IReadOnlyList<FileInfo> Files => new FileInfo(Path).Directory!.GetFiles();

    private string Program => System.IO.Path.Combine(folder, OperatingSystem.IsWindows() ? "ohmstead.exe" : "ohmstead");

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        if (!TestExtent.IsAll)
        {
            return;
        }

        string[] words =
        [
            "publish",
            ProjectFolder.At("src/Ohmstead"),
            $"-p:PublishFor={RuntimeInformation.RuntimeIdentifier}",
            PublishedKind.Argument,
            "-o",
            folder,
            // Apart from what the ordinary build makes; the analyzers had their say there.
            $"-p:ArtifactsPath={ProjectFolder.At("artifacts/published")}",
            "-p:RunAnalyzers=false",
            "-p:EnforceCodeStyleInBuild=false",
            // Nothing goes on running that holds the output open.
            "--disable-build-servers",
            "--nologo",
            "-v",
            "quiet",
        ];
        using var process = Process.Start(
            new ProcessStartInfo("dotnet", words)
            {
                UseShellExecute = false,
                RedirectStandardOutput = true,
                RedirectStandardError = true,
                WorkingDirectory = ProjectFolder.Root,
            }
        )!;
        // How long linking takes is the machine's affair: it may go on until the run itself is given up, and then ends with it.
        var givenUp = TestContext.Current.CancellationToken;
        try
        {
            var told = process.StandardOutput.ReadToEndAsync(givenUp);
            var error = process.StandardError.ReadToEndAsync(givenUp);
            await process.WaitForExitAsync(givenUp);
            refused =
                process.ExitCode == 0 && File.Exists(Program)
                    ? null
                    : $"the program could not be published, {PublishedKind.Words}:\ndotnet "
                        + $"{string.Join(' ', words)}\n{await told}{await error}";
        }
        catch (OperationCanceledException)
        {
            refused = $"the program was not published, {PublishedKind.Words}: the run was given up";
        }
        finally
        {
            process.Kill(entireProcessTree: true);
        }
    }

    /// <inheritdoc/>
    public ValueTask DisposeAsync()
    {
        Directory.Delete(folder, recursive: true);
        return ValueTask.CompletedTask;
    }
}
