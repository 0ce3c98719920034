using System.CommandLine;
using Ohmstead;
using Ohmstead.Commands;

using var terminal = Terminal.OfProcess();
var root = new RootCommand(
    """
    Ohmstead keeps restoration records of old electronic boards as plain text and works out what they mean.

    Examples:
      ohmstead check records                     check a whole collection
      ohmstead check records/boards/SP-0007.md   check one board
      ohmstead report records --to pages         check, and write the pages
      ohmstead why SP-0007 C12 --in records      tell a verdict in full
      ohmstead explain polarity-not-established  explain a check
    """)
{
    new CheckCommand(terminal).Build(),
    new ReportCommand(terminal).Build(),
    new WhyCommand(terminal).Build(),
    new ExplainCommand(terminal).Build(),
};
try
{
    var parsed = root.Parse(args);
    var configuration = new InvocationConfiguration { Output = terminal.Out, Error = terminal.Error, EnableDefaultExceptionHandler = false };
    var exit = parsed.Invoke(configuration);
    return parsed.Errors.Count > 0 ? ExitCode.Usage : exit;
}
catch (IOException problem)
{
    // A reader that went away (head -1) wants no message; a full disk wants one.
    try
    {
        terminal.Error.WriteLine($"could not write: {problem.Message}");
    }
    catch (IOException)
    {
        return ExitCode.Incomplete;
    }

    return ExitCode.Incomplete;
}
#pragma warning disable CA1031 // The last resort: whatever escapes is a bug, told in three lines and never as a stack trace of somebody's record.
catch (Exception bug)
#pragma warning restore CA1031
{
    terminal.Error.WriteLine("this is a bug of the program, your records were not touched");
    terminal.Error.WriteLine($"  {bug.GetType().Name} in {bug.TargetSite?.DeclaringType?.Name}.{bug.TargetSite?.Name}: {bug.InnerException?.GetType().Name} {bug.InnerException?.TargetSite?.Name}");
    terminal.Error.WriteLine("  please report it together with the command you gave");
    return ExitCode.Bug;
}
