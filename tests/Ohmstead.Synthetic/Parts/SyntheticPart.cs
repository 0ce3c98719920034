using Ohmstead.Synthetic.Text;

namespace Ohmstead.Synthetic.Parts;

/// <summary>An invented part: what the generator needs to know to measure it, and its line in a record.</summary>
/// <param name="Ref">The reference designator.</param>
/// <param name="Group">How it is measured.</param>
/// <param name="Nominal">The marked value in F, Ω or H; 0 where there is none.</param>
/// <param name="Line">The part as a record writes it.</param>
/// <param name="Template">For an electrolytic, its place in <see cref="ElectrolyticTemplate.All"/>; else -1.</param>
/// <param name="LossScale">For a film capacitor, its loss factor in parts of what polyester has.</param>
public sealed record SyntheticPart(string Ref, PartGroup Group, decimal Nominal, FlowLine Line, int Template = -1, decimal LossScale = 1m);
