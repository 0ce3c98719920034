using System.Diagnostics.CodeAnalysis;
using System.Reflection;
using System.Runtime.CompilerServices;
using Ohmstead.Records.Nodes;
using Ohmstead.Yaml.Plain;

namespace Ohmstead.Yaml;

/// <summary>Gives each worker its own reader.</summary>
public static class NodeReaders
{
    // Beside the library's pools, and for as long as they.
    private static readonly Lock Turn = new();

    /// <summary>A reader for one worker.</summary>
    /// <param name="worker">Which worker, from 0. The first reads with the program's own library; each other with its own copy of
    /// it.</param>
    /// <returns>A reader that gives the same nodes and findings as any other.</returns>
    /// <remarks>
    /// Each reads plain records itself, and loads the library only for the first that is not plain. The library keeps pools in static
    /// fields, and two threads that share them cost more than one thread alone. So each worker but the first loads its own copy; where none
    /// can be loaded, as in a program linked ahead of time, those that share the library read with it in turn and do all else side by side.
    /// Slower beside others, never wrong.
    /// Of 2,000 records that all go to the library, two workers of the linked program cost 6.0 s of processor time without turns and 5.0 s
    /// with them (one worker 4.9 s). The program that loads a copy each, published with Linked=false, cost 7.1 s (one worker 5.9 s).
    /// </remarks>
    public static INodeReader ForWorker(int worker) => new PlainNodeReader(() => Thorough(worker));

    /// <summary>A reader for one worker that reads two states of each file, one after the other: what stands in both on the same line is
    /// one node.</summary>
    /// <param name="worker">Which worker, from 0.</param>
    /// <returns>A reader that gives the same nodes and findings as any other.</returns>
    public static INodeReader ForStates(int worker) => new PlainNodeReader(() => Thorough(worker), readsStates: true);

    /// <summary>A reader for the only worker.</summary>
    internal static PlainNodeReader Plain() => new(() => Thorough(0));

    /// <summary>A reader that knows all of YAML.</summary>
    internal static INodeReader Thorough(int worker) => (worker > 0 && CanLoadCode ? Separate() : null) ?? new YamlNodeReader(Turn);

    // A program linked ahead of time has its code and cannot load more.
    [FeatureGuard(typeof(RequiresUnreferencedCodeAttribute))]
    // The analyzer knows this property to guard compiling alone. It guards loading as well, since nothing is left out without linking
    // ahead.
#pragma warning disable IL4000
    private static bool CanLoadCode => RuntimeFeature.IsDynamicCodeSupported;
#pragma warning restore IL4000

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
        catch (Exception exception)
            when (exception
                    is IOException
                        or BadImageFormatException
                        or TypeLoadException
                        or TargetInvocationException
                        or NotSupportedException
            )
        {
            return null;
        }
    }
}
