using Ohmstead.Records.Binding;
using Ohmstead.Records.Decoding;
using Ohmstead.Records.Nodes;
using Ohmstead.Yaml;
using YamlDotNet.Core;

namespace Ohmstead.Benchmarks.Stages;

/// <summary>One step of the way from bytes to a page.</summary>
/// <param name="Name">What it does.</param>
/// <param name="Run">Does it to one record.</param>
/// <param name="IsPartOfNext">True when the next stage does this work again as a part of its own, so that it is not counted in the
/// sum.</param>
public sealed record Stage(string Name, Action<Sample> Run, bool IsPartOfNext = false)
{
    /// <summary>All stages in order. A new one is a line here and what it leaves in <see cref="Sample"/>.</summary>
    public static IReadOnlyList<Stage> All()
    {
        var library = new YamlNodeReader();
        var reader = NodeReaders.ForWorker(0);
        return
        [
            new("bytes to text", sample => sample.Source = SourceDecoder.Decode(sample.Path, sample.Bytes.Span).Source, IsPartOfNext: true),
            new("text to YAML events, the library alone", Events, IsPartOfNext: true),
            new(
                "bytes to nodes by the library (the two above included)",
                sample => sample.Nodes = library.Read(sample.Path, sample.Bytes, FileForm.Markdown, ReadingLimits.Usual),
                IsPartOfNext: true
            ),
            new("bytes to nodes, plain records without the library", sample =>
                sample.Nodes = reader.Read(sample.Path, sample.Bytes, FileForm.Markdown, ReadingLimits.Usual)
            ),
            new("nodes to model", sample => sample.Board = FileBinding.Board(sample.Path, sample.Nodes!).File),
        ];
    }

    private static void Events(Sample sample)
    {
        if (sample.Source is not { } source || FrontMatter.Find(source).FrontMatter is not { } front)
        {
            return;
        }

        using var text = new StringReader(source.Text[front.Start..front.End]);
        var parser = new Parser(text);
        while (parser.MoveNext()) { }
    }
}
