using System.Text;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;
using Ohmstead.Yaml;

namespace Ohmstead.Records.Tests;

/// <summary>Reads files written in a test, through the whole way from bytes to models.</summary>
internal static class Reads
{
    internal static NodeReading Nodes(string schemaName, string text) =>
        new YamlNodeReader().Read(
            PathOf(schemaName),
            Encoding.UTF8.GetBytes(text),
            schemaName is "board" or "design" ? FileForm.Markdown : FileForm.Yaml,
            ReadingLimits.Usual
        );

    internal static string PathOf(string schemaName) =>
        schemaName switch
        {
            "board" => "boards/SP-0007.md",
            "design" => "designs/barograph-servo.md",
            _ => schemaName + ".yaml",
        };

    internal static IReadOnlyList<Finding> Findings(string schemaName, string text)
    {
        var nodes = Nodes(schemaName, text);
        var path = PathOf(schemaName);
        return schemaName switch
        {
            "board" => FileBinding.Board(path, nodes).Findings,
            "design" => FileBinding.Design(path, nodes).Findings,
            "collection" => FileBinding.Collection(path, nodes).Findings,
            "instruments" => FileBinding.Instruments(path, nodes).Findings,
            "meters" => MeterBinding.Meters(path, nodes).Findings,
            _ => FileBinding.Stock(path, nodes).Findings,
        };
    }

    internal static FileReading<Model.BoardFile> Board(string text) => FileBinding.Board(PathOf("board"), Nodes("board", text));

    internal static string InFile(string schemaName, string yaml) => schemaName is "board" or "design" ? $"---\n{yaml}---\n" : yaml;
}
