namespace Ohmstead.Electronics.Capacitors;

/// <summary>The class of a capacitor whose failure can burn or shock. X stands across the line, Y from line to earth.</summary>
public enum SafetyClass
{
    /// <summary>Not a safety capacitor, however high its rated voltage.</summary>
    None,

    /// <summary>Across the line, high pulse.</summary>
    X1,

    /// <summary>Across the line, general.</summary>
    X2,

    /// <summary>Across the line, older editions only.</summary>
    X3,

    /// <summary>Over reinforced or double insulation.</summary>
    Y1,

    /// <summary>Over basic insulation.</summary>
    Y2,

    /// <summary>Older editions only.</summary>
    Y3,

    /// <summary>Below 150 V.</summary>
    Y4,
}

/// <summary>The words of the classes, and what follows from a class alone.</summary>
public static class SafetyClasses
{
    /// <summary>The classes and how they are written.</summary>
    public static WordList<SafetyClass> Words { get; } = new(
        (SafetyClass.X1, "X1"),
        (SafetyClass.X2, "X2"),
        (SafetyClass.X3, "X3"),
        (SafetyClass.Y1, "Y1"),
        (SafetyClass.Y2, "Y2"),
        (SafetyClass.Y3, "Y3"),
        (SafetyClass.Y4, "Y4"));

    /// <summary>Whether it stands from the mains to what can be touched.</summary>
    public static bool IsY(this SafetyClass safety) => safety is SafetyClass.Y1 or SafetyClass.Y2 or SafetyClass.Y3 or SafetyClass.Y4;
}
