using Ohmstead.Published.Tests;
using Ohmstead.Tests.Support;

[assembly: AssemblyFixture(typeof(PublishedProgram))]

namespace Ohmstead.Published.Tests;

/// <summary>The program as a person publishes it for their machine, which tests/Published.proj makes where all tests are asked
/// for.</summary>
public sealed class PublishedProgram
{
    private readonly string program = Child.Published;

    /// <summary>The path of the program. Whoever asks is skipped where it is not to be published.</summary>
    public string Path
    {
        get
        {
            Assert.SkipUnless(TestExtent.IsAll, TestExtent.LeftOut);
            Assert.True(File.Exists(program), $"the program was not published, {PublishedKind.Words}");
            return program;
        }
    }

    /// <summary>The files that a person gets.</summary>
    public IReadOnlyList<FileInfo> Files => new FileInfo(Path).Directory!.GetFiles();
}
