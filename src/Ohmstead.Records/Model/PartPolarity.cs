namespace Ohmstead.Records.Model;

/// <summary>Whether a part has a right way round, where its kind does not say it.</summary>
public enum PartPolarity
{
    /// <summary>It has.</summary>
    Polarised,

    /// <summary>It is made for a voltage that changes its sign although its relatives are not.</summary>
    Bipolar,

    /// <summary>It has none.</summary>
    None,
}

/// <summary>What follows from a written polarity.</summary>
public static class PartPolarities
{
    /// <summary>Whether it says that the part goes in either way round.</summary>
    public static bool IsEitherWayRound(this PartPolarity polarity) => polarity is PartPolarity.Bipolar or PartPolarity.None;
}
