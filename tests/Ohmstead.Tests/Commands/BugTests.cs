using Ohmstead.Running;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>A bug of the program itself is told in three lines, without a stack trace and without anything from a record.</summary>
public sealed class BugTests
{
    [Fact]
    public void An_exception_that_nobody_expected_ends_with_4_and_three_lines()
    {
        using var error = new StringWriter { NewLine = "\n" };
        using var terminal = new Terminal(new BrokenWriter(), error, showsProgress: false);
        using var interruption = new Interruption();
        Assert.Equal(4, CommandLine.Run(["check", CollectionCopy.Untouched, "--as-of", "2026-11-25"], terminal, interruption));
        Assert.Equal(3, error.ToString().Count(c => c == '\n'));
        Assert.StartsWith("this is a bug of the program, your records were not touched\n", error.ToString(), StringComparison.Ordinal);
    }

    private sealed class BrokenWriter : StringWriter
    {
        public override void WriteLine(string? value) => throw new InvalidOperationException("SP-0001 is nobody's business");
    }
}
