using System.Diagnostics.CodeAnalysis;
using System.Reflection;
using System.Runtime.CompilerServices;
using Ohmstead.Records.Nodes;
using Ohmstead.Yaml.Plain;

namespace Ohmstead.Yaml;

/// <summary>Gives each worker its own reader.</summary>
public static class NodeReaders
{
    /// <summary>A reader for one worker.</summary>
    /// <param name="worker">Which worker, from 0. The first reads with the program's own library; each other with its own copy of it.</param>
    /// <returns>A reader that gives the same nodes and findings as any other.</returns>
    /// <remarks>
    /// Each reads plain records itself, and loads the library only for the first that is not plain. The library keeps pools in static fields, and two threads that share them read more slowly than one thread alone. Where a copy
    /// cannot be loaded, as in a single-file program, the worker gets an ordinary reader: slower beside others, and never wrong.
    /// </remarks>
    public static INodeReader ForWorker(int worker) => new PlainNodeReader(() => Thorough(worker));

    /// <summary>A reader for the only worker.</summary>
    internal static PlainNodeReader Plain() => new(() => Thorough(0));

    /// <summary>A reader that knows all of YAML.</summary>
    internal static INodeReader Thorough(int worker) => worker == 0 ? new YamlNodeReader() : SeparateOrNull() ?? new YamlNodeReader();

    // A program linked ahead of time has its code and cannot load more.
    [FeatureGuard(typeof(RequiresUnreferencedCodeAttribute))]
    private static bool CanLoadCode => RuntimeFeature.IsDynamicCodeSupported;

    private static INodeReader? SeparateOrNull() => CanLoadCode ? Separate() : null;

    [RequiresUnreferencedCode("loads this assembly once more from its file")]
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
