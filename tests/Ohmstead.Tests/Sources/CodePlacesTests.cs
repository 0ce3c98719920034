using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Sources;

/// <summary>A file of code outside every project is built by nobody, so that nobody sees when it is wrong or forgotten.</summary>
public sealed class CodePlacesTests
{
    [Theory]
    [InlineData(".")]
    [InlineData("src")]
    [InlineData("schema")]
    [InlineData("records")]
    public void No_code_lies_outside_the_projects(string folder) =>
        Assert.Empty(Directory.EnumerateFiles(ProjectFolder.At(folder), "*.cs").Select(Path.GetFileName));
}
