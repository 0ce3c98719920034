namespace Ohmstead.Browser.Tests;

/// <summary>The system's Chromium; where it is missing, Debian's package is installed.</summary>
internal static class Chromium
{
    private static readonly string[] Places = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];

    /// <summary>What a test run wants of it: no sandbox, which root cannot have, and no talk with the network.</summary>
    public static IReadOnlyList<string> Arguments { get; } =
    [
        "--no-sandbox",
        "--disable-gpu",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        // Pages of one report need not be kept from each other, and with two windows Chromium would start a process ahead for each page
        // opened.
        "--disable-site-isolation-trials",
    ];

    /// <summary>Whether pages are to be looked at: a usual run does so where a browser is there already, and installs none.</summary>
    public static bool IsWanted => TestExtent.IsAll || Installed() is not null;

    /// <summary>What a test asks for; where no pages are to be looked at, the test is skipped.</summary>
    public static T Wanted<T>(T value)
    {
        Assert.SkipUnless(IsWanted, $"no Chromium is installed; {TestExtent.LeftOut}");
        return value;
    }

    /// <summary>The path of the program, which is installed first when need be.</summary>
    public static async Task<string> FindAsync()
    {
        if (Installed() is { } there)
        {
            return there;
        }

        await AptAsync("update");
        await AptAsync("install", "-y", "--no-install-recommends", "chromium");
        return Installed()
            ?? throw new InvalidOperationException(
                "the package chromium was installed, yet there is no /usr/bin/chromium; install Chromium there to run the browser tests"
            );
    }

    private static string? Installed() => Places.FirstOrDefault(File.Exists);

    private static async Task AptAsync(params string[] arguments)
    {
        if (!File.Exists("/usr/bin/apt-get"))
        {
            throw new InvalidOperationException(
                "the browser tests need Chromium in /usr/bin/chromium, and there is no apt-get to install it with"
            );
        }

        string[] asRoot = ["DEBIAN_FRONTEND=noninteractive", "apt-get", .. arguments];
        var done = Environment.IsPrivilegedProcess
            ? await Command.RunAsync("/usr/bin/env", asRoot)
            : await Command.RunAsync("/usr/bin/env", ["sudo", "-n", .. asRoot]);
        if (done.ExitCode != 0)
        {
            throw new InvalidOperationException(
                $"the browser tests need Chromium; run as root: apt-get install chromium\n{done.Line}\n{done.Output}"
            );
        }
    }
}
