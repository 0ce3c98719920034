using Ohmstead.Records.Text;

namespace Ohmstead.Records.Model;

/// <summary>A value together with the text a person wrote and where it stands.</summary>
/// <typeparam name="T">What the text means.</typeparam>
/// <param name="Value">What the text means.</param>
/// <param name="Text">The text as written.</param>
/// <param name="Spot">Where it stands.</param>
public sealed record Written<T>(T Value, string Text, Spot Spot);
