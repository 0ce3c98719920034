using System.CommandLine;
using System.Globalization;
using Ohmstead.Collections;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Nodes;
using Ohmstead.Running;
using Ohmstead.Starting;
using Ohmstead.Writing;
using Ohmstead.Yaml;

namespace Ohmstead.Commands;

/// <summary>A design that is to be started from a parts list.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Title">What it is; the name where nobody says it.</param>
/// <param name="File">The list.</param>
/// <param name="IsTrial">True to show it, and write nothing.</param>
internal readonly record struct WantedDesign(string Name, string? Title, string File, bool IsTrial);

/// <summary>Starts a design straight from a parts list.</summary>
/// <param name="terminal">Where it is told.</param>
/// <param name="pairs">What a person says of columns, kinds and units.</param>
internal sealed class DesignFromList(Terminal terminal, StartPartsOptions pairs)
{
    /// <summary>The remark by which editors find the schema of a design; null where it does not lie beside the records.</summary>
    public static string? SchemaLine(CollectionFolder files) =>
        File.Exists(files.Full("schema/design.schema.json")) ? "yaml-language-server: $schema=../schema/design.schema.json" : null;

    /// <summary>Writes the design with the parts that were understood; what was not is told.</summary>
    /// <returns>The exit code.</returns>
    public int Start(ParseResult parsed, WantedDesign wanted, CollectionFolder files, RunOptions run)
    {
        var taker = new PartsListTaker(terminal, pairs);
        if (taker.Open(parsed, wanted.File) is not { } list)
        {
            return ExitCode.Usage;
        }

        var target = ListTarget.NewDesign(files, $"designs/{wanted.Name}.md", run);
        return taker.Take(parsed, wanted.File, list, target, items =>
        {
            if (TextOf(wanted, target, items, run) is not { } text)
            {
                return ExitCode.Findings;
            }

            if (wanted.IsTrial)
            {
                taker.Show(items);
            }
            else
            {
                RecordFile.Create(files.Root, target.Path, text);
            }

            terminal.Out.WriteLine(
                Printable.Escape(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{target.Path}: {(wanted.IsTrial ? "would be written" : "written")}, {items.Count} parts"
                    )
                )
            );
            return ExitCode.Clean;
        });
    }

    // The text of the design with its parts, judged before it is written; null, told, where there is none.
    private string? TextOf(WantedDesign wanted, ListTarget target, IReadOnlyList<string> items, RunOptions run)
    {
        if (items.Count == 0)
        {
            PartsListTaker.Refuse(terminal, $"no part of {wanted.File} was understood; nothing was written", null);
            return null;
        }

        var called = wanted.Title ?? wanted.Name;
        var remark = SchemaLine(target.Files) is { } schema ? $"# {schema}\n" : string.Empty;
        var start = $"---\n{remark}design: {wanted.Name}\ntitle: {FlowText.TextScalar(called)}\nformat: 1\n---\n";
        var outcome = RecordEditor
            .Open(target.Path, start, FileForm.Markdown, new YamlNodeReader(), out _)
            ?.AppendAll(target.Shape, "parts", items);
        if (outcome?.Text is not { } text)
        {
            PartsListTaker.Refuse(
                terminal,
                outcome?.Refusal!.Message ?? $"'{called}' cannot be the title of a record",
                outcome?.Refusal!.NextStep
            );
            return null;
        }

        var after = new CollectionRun(
            target.Files,
            run with
            {
                Instead = new Dictionary<string, string>(StringComparer.Ordinal) { [target.Path] = text },
            }
        ).Run();
        return JudgedFiles.AreSound(terminal, target.Before, after, [target.Path]) ? text : null;
    }
}
