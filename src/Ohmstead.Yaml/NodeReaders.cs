using System.Reflection;
using Ohmstead.Records.Nodes;

namespace Ohmstead.Yaml;

/// <summary>Gives each worker its own reader.</summary>
public static class NodeReaders
{
    /// <summary>A reader for one worker.</summary>
    /// <param name="worker">Which worker, from 0. The first has an ordinary reader; each other has one with its own copy of the library.</param>
    /// <returns>A reader that gives the same nodes and findings as any other.</returns>
    /// <remarks>
    /// The library keeps pools in static fields, and two threads that share them read more slowly than one thread alone. Where a copy
    /// cannot be loaded, as in a single-file program, the worker gets an ordinary reader: slower beside others, and never wrong.
    /// </remarks>
    public static INodeReader ForWorker(int worker) => worker == 0 ? new YamlNodeReader() : Separate() ?? new YamlNodeReader();

    private static INodeReader? Separate()
    {
        try
        {
            // The one use of reflection: statics are per load context, and a type of another context has no name the compiler knows.
            return WorkerLoadContext.TryLoad() is { } copy
                ? Activator.CreateInstance(copy.GetType(typeof(YamlNodeReader).FullName!, throwOnError: true)!) as INodeReader
                : null;
        }
        catch (Exception exception) when (exception is IOException or BadImageFormatException or TypeLoadException or TargetInvocationException or NotSupportedException)
        {
            return null;
        }
    }
}
