using System.CommandLine;
using Ohmstead.Running;
using Ohmstead.Starting;

namespace Ohmstead.Commands;

/// <summary>Writes the schemas where editors find them.</summary>
internal sealed class StartSchemasCommand(Terminal terminal)
{
    private readonly Argument<string> folder = new("FOLDER") { Description = "Where they shall lie." };

    public Command Build()
    {
        var command = new Command(
            "schemas",
            """
            Write the JSON schemas of all records into a folder, and say what goes into the settings of an editor. Once for a machine is
            enough: with these settings keys and words are completed in every collection.

            Examples:
              ohmstead start schemas ~/.ohmstead/schemas
            """
        )
        {
            folder,
        };
        command.SetAction(parsed =>
        {
            var root = Path.GetFullPath(parsed.GetValue(folder)!);
            if (File.Exists(root))
            {
                terminal.Error.WriteLine(Printable.Escape($"'{root}' is a file; name a folder"));
                return ExitCode.Usage;
            }

            StartingFile[] files = [.. CollectionFiles.Schemas(string.Empty)];
            NewFiles.LookAt(root, files);
            var left = StartCollectionCommand.Write(terminal, root, files);
            terminal.Out.WriteLine("for the settings of an editor, under yaml.schemas:");
            foreach (var line in CollectionFiles.SettingsFor(new Uri(root + Path.DirectorySeparatorChar).AbsoluteUri))
            {
                terminal.Out.WriteLine(Printable.Escape($"  {line}"));
            }

            return left > 0 ? ExitCode.Incomplete : ExitCode.Clean;
        });
        return command;
    }
}
