using System.Diagnostics.CodeAnalysis;
using System.Reflection;
using System.Runtime.Loader;

namespace Ohmstead.Yaml;

/// <summary>Holds one more copy of this assembly and of the YAML library, and shares everything else with the program.</summary>
[RequiresUnreferencedCode("loads this assembly once more from its file")]
internal sealed class WorkerLoadContext : AssemblyLoadContext
{
    private WorkerLoadContext()
        : base("yaml worker") { }

    /// <summary>A copy of this assembly, or null where its files do not lie beside each other.</summary>
    internal static Assembly? TryLoad()
    {
        var own = FileOf(typeof(WorkerLoadContext).Assembly.GetName().Name);
        return File.Exists(own) && File.Exists(FileOf(LibraryName)) ? new WorkerLoadContext().LoadFromAssemblyPath(own) : null;
    }

    /// <inheritdoc/>
    // Null sends the question to the program's own context, so that INodeReader is one type for all.
    protected override Assembly? Load(AssemblyName assemblyName) =>
        assemblyName.Name == LibraryName ? LoadFromAssemblyPath(FileOf(LibraryName)) : null;

    private static string? LibraryName => typeof(YamlDotNet.Core.Parser).Assembly.GetName().Name;

    private static string FileOf(string? assembly) => Path.Combine(AppContext.BaseDirectory, assembly + ".dll");
}
