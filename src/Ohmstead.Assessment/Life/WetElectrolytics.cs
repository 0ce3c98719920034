namespace Ohmstead.Assessment.Life;

/// <summary>The kinds of part that dry out in use and whose oxide thins on the shelf: aluminium electrolytics with a liquid electrolyte.</summary>
public static class WetElectrolytics
{
    /// <summary>Whether a kind of part is one.</summary>
    public static bool Is(string kind) => kind is "aluminium electrolytic" or "bipolar electrolytic";
}
