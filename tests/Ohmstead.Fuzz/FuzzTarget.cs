namespace Ohmstead.Fuzz;

/// <summary>One reader of what strangers write, and what must hold whatever they write.</summary>
/// <param name="Name">The name on the command line and of the folder of its corpus.</param>
/// <param name="Try">Reads one input. Any exception is a fault.</param>
internal sealed record FuzzTarget(string Name, Action<byte[]> Try);
