using System.CommandLine;
using System.CommandLine.Invocation;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Binding;
using Ohmstead.Running;

namespace Ohmstead.Commands;

/// <summary>Tells which program this is, of which commit, and by which rules it judges: a verdict can be asked for again only where these
/// are known.</summary>
internal sealed class VersionLines : SynchronousCommandLineAction
{
    /// <inheritdoc/>
    public override bool ClearsParseErrors => true;

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        var output = parseResult.InvocationConfiguration.Output;
        output.WriteLine($"ohmstead {ProgramVersion.Number}");
        output.WriteLine(ProgramVersion.Commit is { } commit ? $"commit {commit}" : "built from source, and not told of which commit");
        output.WriteLine(FormattableString.Invariant($"rules {JudgingRules.Number}, record format {FileBinding.KnownFormat}"));
        return ExitCode.Clean;
    }
}
