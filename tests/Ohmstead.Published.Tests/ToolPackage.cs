using System.IO.Compression;
using Ohmstead.Tests.Support;

namespace Ohmstead.Published.Tests;

/// <summary>
/// The program as a package of the SDK's tools, packed once from what the tests were built from and installed from the folder in which it
/// lies, with no other source and with nothing of the machine's own packages.
/// </summary>
public sealed class ToolPackage : IAsyncLifetime
{
    private readonly CollectionCopy folder = CollectionCopy.Empty();

    /// <summary>What the package holds, by name.</summary>
    public IReadOnlyDictionary<string, byte[]> Entries { get; private set; } = new Dictionary<string, byte[]>();

    /// <summary>The folder of the package.</summary>
    public string Source => folder.At("packages");

    /// <summary>The command that an installation puts there.</summary>
    public string Command => folder.At("tools/ohmstead");

    /// <summary>What the SDK is told, so that it takes nothing from the machine but itself.</summary>
    public (string Name, string Value)[] Apart =>
        [
            ("DOTNET_CLI_HOME", folder.At("home")),
            ("NUGET_PACKAGES", folder.At("unpacked")),
            ("DOTNET_CLI_TELEMETRY_OPTOUT", "1"),
            ("DOTNET_NOLOGO", "1"),
            ("DOTNET_ROOT", Path.GetFullPath(Path.Combine(Path.GetDirectoryName(typeof(object).Assembly.Location)!, "../../.."))),
        ];

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        if (!TestExtent.IsAll)
        {
            return;
        }

        // What these tests run with is built; a package for others is packed from a release build.
        var configuration = Path.GetFileName(AppContext.BaseDirectory.TrimEnd(Path.DirectorySeparatorChar));
        var packed = await Child.ShellAsync(
            $"dotnet pack '{ProjectFolder.At("src/Ohmstead")}' --no-build --configuration {configuration} --output packages "
                + "--disable-build-servers --nologo --verbosity quiet",
            folder.Root
        );
        Assert.True(packed.Exit == 0, packed.Out + packed.Error);
        var installed = await Child.ShellAsync("dotnet tool install ohmstead --tool-path tools --source packages", folder.Root, Apart);
        Assert.True(installed.Exit == 0, installed.Out + installed.Error);
        await using var package = await ZipFile.OpenReadAsync(Assert.Single(Directory.GetFiles(Source)));
        Entries = package.Entries.ToDictionary(entry => entry.FullName, Bytes, StringComparer.Ordinal);
    }

    /// <inheritdoc/>
    public ValueTask DisposeAsync()
    {
        folder.Dispose();
        return ValueTask.CompletedTask;
    }

    private static byte[] Bytes(ZipArchiveEntry entry)
    {
        using var stream = entry.Open();
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        return bytes.ToArray();
    }
}
