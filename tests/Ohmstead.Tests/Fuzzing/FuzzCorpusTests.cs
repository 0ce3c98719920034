using Ohmstead.Fuzz;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Fuzzing;

/// <summary>Every input from which the fuzzer starts, those that once found a fault among them, run once through its target.</summary>
public sealed class FuzzCorpusTests
{
    public static TheoryData<string> Targets => [.. FuzzTargets.All.Select(target => target.Name)];

    [Theory]
    [MemberData(nameof(Targets))]
    public void Nothing_in_the_corpus_of_a_target_finds_a_fault(string target)
    {
        var inputs = Directory.GetFiles(ProjectFolder.At($"tests/Ohmstead.Fuzz/Corpus/{target}"));
        Assert.NotEmpty(inputs);
        Assert.All(inputs, input => FuzzTargets.Named(target)!.Try(File.ReadAllBytes(input)));
    }

    [Fact]
    public void Every_folder_of_the_corpus_has_its_target() =>
        Assert.Equal(
            FuzzTargets.All.Select(target => target.Name).Order(StringComparer.Ordinal),
            Directory
                .GetDirectories(ProjectFolder.At("tests/Ohmstead.Fuzz/Corpus"))
                .Select(folder => Path.GetFileName(folder)!)
                .Order(StringComparer.Ordinal)
        );

    [Theory]
    [InlineData("a\u001Bb")]
    [InlineData("a\u202Eb")]
    [InlineData("a\rb")]
    public void A_target_tells_a_byte_that_must_not_get_out(string text) =>
        Assert.Throws<FaultFoundException>(() => Fuzz.Targets.Bytes.AreHarmless(text, "a page"));
}
