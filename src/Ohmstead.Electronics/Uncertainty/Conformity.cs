namespace Ohmstead.Electronics.Uncertainty;

/// <summary>What a reading says about its limits once its uncertainty is counted.</summary>
public enum Conformity
{
    /// <summary>Inside by more than the guard band.</summary>
    Inside,

    /// <summary>Inside, but by less than the guard band: the reading does not prove it.</summary>
    ProbablyInside,

    /// <summary>Outside, but by less than the guard band: the reading does not prove it.</summary>
    ProbablyOutside,

    /// <summary>Outside by more than the guard band.</summary>
    Outside,
}
