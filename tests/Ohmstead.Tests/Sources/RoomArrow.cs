namespace Ohmstead.Tests.Sources;

/// <summary>One folder of a project uses a name that stands in another.</summary>
/// <param name="From">The folder that uses it.</param>
/// <param name="To">The folder that the name stands in.</param>
/// <param name="File">The file that uses it.</param>
/// <param name="Line">The line that uses it, the first one.</param>
/// <param name="Name">The type that is used, or whose member is.</param>
internal sealed record RoomArrow(string From, string To, string File, int Line, string Name)
{
    /// <summary>The arrow in words.</summary>
    public override string ToString() => $"{From} -> {To} because {File} line {Line} uses {Name}";
}
