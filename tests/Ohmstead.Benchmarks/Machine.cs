using System.Globalization;
using System.Runtime.InteropServices;

namespace Ohmstead.Benchmarks;

/// <summary>The conditions under which figures were taken.</summary>
public static class Machine
{
    /// <summary>Prints the runtime, the processors and how busy they were before anything began.</summary>
    public static void Print(TextWriter writer)
    {
        var load = Load();
        var warning = load > 0.5 * Environment.ProcessorCount ? ": the machine is busy, times are too long" : string.Empty;
        writer.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{RuntimeInformation.FrameworkDescription}, {Environment.ProcessorCount} processors, load {load:0.0}{warning}"
            )
        );
    }

    /// <summary>How many wanted a processor in the last minute, where the system tells.</summary>
    public static double Load()
    {
        const string LoadFile = "/proc/loadavg";
        return File.Exists(LoadFile) ? double.Parse(File.ReadAllText(LoadFile).Split(' ')[0], CultureInfo.InvariantCulture) : 0;
    }
}
