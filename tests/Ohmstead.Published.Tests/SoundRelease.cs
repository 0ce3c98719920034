namespace Ohmstead.Published.Tests;

/// <summary>A release of invented programs, made once: its files lie in the folder <c>sound</c>.</summary>
public sealed class SoundRelease : IAsyncLifetime
{
    private ReleaseFolder? folder;

    /// <summary>Where it was made. Whoever asks is skipped where no program is published.</summary>
    internal ReleaseFolder Folder
    {
        get
        {
            Assert.SkipUnless(TestExtent.IsAll, TestExtent.LeftOut);
            Assert.SkipWhen(OperatingSystem.IsWindows(), "runs the steps with bash");
            return folder!;
        }
    }

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        if (!TestExtent.IsAll || OperatingSystem.IsWindows())
        {
            return;
        }

        folder = new();
        folder.Replace("CHANGELOG.md", "## 0.1.0, not released yet", "## 0.1.0, 2026-12-24");
        folder.PutPrograms();
        await folder.MakeAsync("sound");
    }

    /// <inheritdoc/>
    public ValueTask DisposeAsync()
    {
        folder?.Dispose();
        return ValueTask.CompletedTask;
    }
}
