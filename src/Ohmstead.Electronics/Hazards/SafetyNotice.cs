namespace Ohmstead.Electronics.Hazards;

/// <summary>The sentence that stands beside every safety figure.</summary>
public static class SafetyNotice
{
    /// <summary>A figure is information; it never says that something may be touched.</summary>
    public const string Defer =
        "Information only and never permission to touch: defer to local codes, the equipment's service manual and licensed practice.";
}
