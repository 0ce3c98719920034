using System.Globalization;

namespace Ohmstead.Benchmarks.Processes;

/// <summary>What Linux tells about processes in /proc; nothing on other systems.</summary>
public static class ProcFiles
{
    // USER_HZ is 100 on every architecture that .NET runs on.
    private const int TicksPerSecond = 100;
    private const int ChildUserTime = 15;

    /// <summary>Processor time of all children that this process has waited for so far.</summary>
    public static TimeSpan? ChildTime()
    {
        if (!OperatingSystem.IsLinux())
        {
            return null;
        }

        // The name of the program, in parentheses, may hold spaces: counting starts behind it, with the third field.
        var stat = File.ReadAllText("/proc/self/stat");
        var fields = stat[(stat.LastIndexOf(')') + 2)..].Split(' ');
        var ticks =
            long.Parse(fields[ChildUserTime - 2], CultureInfo.InvariantCulture)
            + long.Parse(fields[ChildUserTime - 1], CultureInfo.InvariantCulture);
        return TimeSpan.FromSeconds((double)ticks / TicksPerSecond);
    }

    /// <summary>The largest resident memory so far of a process or of any of its descendants, or null when it is gone.</summary>
    public static long? PeakBytes(int process)
    {
        if (!OperatingSystem.IsLinux())
        {
            return null;
        }

        var peak = Peak(process);
        foreach (var child in Children(process))
        {
            peak = PeakBytes(child) is { } other && !(peak >= other) ? other : peak;
        }

        return peak;
    }

    private static long? Peak(int process)
    {
        var line = Array.Find(Lines(process, "status"), text => text.StartsWith("VmHWM:", StringComparison.Ordinal));
        return line is null
            ? null
            : 1024
                * long.Parse(line["VmHWM:".Length..].Replace("kB", string.Empty, StringComparison.Ordinal), CultureInfo.InvariantCulture);
    }

    private static IEnumerable<int> Children(int process) =>
        Lines(process, $"task/{process}/children")
            .SelectMany(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            .Select(text => int.Parse(text, CultureInfo.InvariantCulture));

    private static string[] Lines(int process, string file)
    {
        try
        {
            return File.ReadAllLines($"/proc/{process}/{file}");
        }
        catch (IOException)
        {
            // It ended between two looks.
            return [];
        }
    }
}
