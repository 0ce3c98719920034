namespace Ohmstead.Records.Merging;

/// <summary>What is written where two contradict each other.</summary>
internal enum Pick
{
    /// <summary>Both, between marks.</summary>
    Marks,

    /// <summary>What the first says.</summary>
    Above,

    /// <summary>What the second says.</summary>
    Below,
}
