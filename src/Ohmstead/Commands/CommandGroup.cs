using System.CommandLine;

namespace Ohmstead.Commands;

/// <summary>Commands that belong together in the work, as the overview tells them.</summary>
/// <param name="Title">What they are for.</param>
/// <param name="Commands">The commands by their names, each made only when it is asked for.</param>
internal sealed record CommandGroup(string Title, IReadOnlyList<(string Name, Func<Command> Make)> Commands);
