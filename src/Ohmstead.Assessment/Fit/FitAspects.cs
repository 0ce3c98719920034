namespace Ohmstead.Assessment.Fit;

/// <summary>
/// What the reasons for and against a replacement are about; the words are those of the rules for capacitors where these have them.
/// </summary>
internal static class FitAspects
{
    internal const string Kind = "kind";
    internal const string Value = "value";
    internal const string Tolerance = "tolerance";
    internal const string Voltage = "voltage";
    internal const string WorkingVoltage = "working voltage";
    internal const string Esr = "ESR";
    internal const string Ripple = "ripple";
    internal const string Power = "power";
    internal const string Current = "current";
    internal const string Temperature = "temperature";
    internal const string Safety = "safety";
    internal const string Polarity = "polarity";
    internal const string Speed = "speed";
    internal const string Breaking = "breaking capacity";
    internal const string Standard = "standard";
    internal const string Form = "form";
    internal const string Pitch = "pitch";
    internal const string Size = "size";
    internal const string Type = "type";
    internal const string Shelf = "shelf";
    internal const string Reading = "reading";

    /// <summary>The rank of what weighs least.</summary>
    internal const int LastRank = 8;

    internal static bool IsMechanical(string aspect) => aspect is Form or Pitch or Size;

    /// <summary>
    /// How much an aspect weighs among reasons of the same weight, the heaviest first: what can hurt, then what the circuit sees, then what
    /// the hands can mend.
    /// </summary>
    internal static int Rank(string aspect) =>
        aspect switch
        {
            Safety => 0,
            Polarity => 1,
            WorkingVoltage or Voltage or Breaking or Speed or Standard => 2,
            Value or Power or Current or Type => 3,
            Esr or Ripple => 4,
            Kind => 5,
            Temperature or Tolerance => 6,
            Reading or Shelf => 7,
            _ => LastRank,
        };
}
