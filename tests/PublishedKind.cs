namespace Ohmstead;

/// <summary>Which program can be published on this machine: one that is linked ahead of time needs a C linker.</summary>
internal static class PublishedKind
{
    /// <summary>True when a C linker is there, and the program is linked ahead of time; else it is code and runtime in one image.</summary>
    public static bool IsLinked => Compiler is not null;

    /// <summary>The C compiler that links, or null when there is none.</summary>
    public static string? Compiler { get; } =
        IsOnPath("clang") ? "clang"
        : IsOnPath("gcc") ? "gcc"
        : null;

    /// <summary>What asks for it where the product is published.</summary>
    public static string Argument => IsLinked ? "-p:Linked=true" : "-p:Linked=false";

    /// <summary>Which program it is, in words.</summary>
    public static string Words => IsLinked ? "linked ahead of time" : "code and runtime in one image, for no C linker is on the path";

    /// <summary>True when one of the folders of programs holds it.</summary>
    public static bool IsOnPath(string program)
    {
        var folders = (Environment.GetEnvironmentVariable("PATH") ?? string.Empty).Split(Path.PathSeparator);
        return folders.Any(folder => File.Exists(Path.Combine(folder, program)));
    }
}
