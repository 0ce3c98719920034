using Ohmstead.Records.Model;

namespace Ohmstead.PartsLists;

/// <summary>What a person says about a list beside its columns.</summary>
/// <param name="Kinds">Kinds by reference or by class letters: <c>C5</c> before <c>C</c>.</param>
/// <param name="Units">The units of bare figures by class letters: <c>R</c> is in Ω.</param>
/// <param name="KindThere">The kind of a part that the record has already, or null.</param>
internal sealed record ListChoices(
    IReadOnlyDictionary<string, PartKind> Kinds,
    IReadOnlyDictionary<string, string> Units,
    Func<string, PartKind?> KindThere
);
