using System.Diagnostics;

namespace Ohmstead.Machine.Tests.Faults;

/// <summary>The library that stands between a program and the system's own, made from faults.c by the C compiler that is there.</summary>
internal static class FaultLibrary
{
    private static readonly Lazy<string?> Made = new(Make);

    /// <summary>Its path; null where programs are not watched: there is no C compiler, or the system is another than Linux.</summary>
    public static string? Path => Made.Value;

    /// <summary>Why a test that needs it is left out.</summary>
    public const string Missing = "calls are failed by a library that is loaded before the system's, on Linux, made by a C compiler";

    private static string? Make()
    {
        if (!OperatingSystem.IsLinux() || !PublishedKind.IsLinked)
        {
            return null;
        }

        // One of another process's own name is renamed into place, so that nobody loads half of one.
        var library = System.IO.Path.Combine(AppContext.BaseDirectory, "faults.so");
        var own = $"{library}.{Environment.ProcessId}";
        var source = System.IO.Path.Combine(AppContext.BaseDirectory, "Faults", "faults.c");
        string[] words = ["-shared", "-fPIC", "-O1", "-Wall", "-Wextra", "-Werror", "-o", own, source, "-ldl"];
        var start = new ProcessStartInfo(PublishedKind.Compiler!, words) { UseShellExecute = false, RedirectStandardError = true };
        using var compiler = Process.Start(start)!;
        var told = compiler.StandardError.ReadToEnd();
        compiler.WaitForExit();
        Assert.True(compiler.ExitCode == 0, told);
        File.Move(own, library, overwrite: true);
        return library;
    }
}
