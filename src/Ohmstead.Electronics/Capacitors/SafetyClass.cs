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
