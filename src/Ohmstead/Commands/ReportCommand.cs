using System.CommandLine;

namespace Ohmstead.Commands;

internal sealed class ReportCommand(Terminal terminal)
{
    public Command Build()
    {
        _ = terminal;
        return new Command("report", "Check a collection and write its pages.");
    }
}
