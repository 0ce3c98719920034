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

    /// <summary>Marked for both: X1 across the line, Y1 to earth.</summary>
    X1Y1,

    /// <summary>Marked for both: X1 across the line, Y2 to earth.</summary>
    X1Y2,

    /// <summary>Marked for both: X1 across the line, Y4 to earth.</summary>
    X1Y4,

    /// <summary>Marked for both: X2 across the line, Y2 to earth.</summary>
    X2Y2,

    /// <summary>Marked for both: X2 across the line, Y3 to earth.</summary>
    X2Y3,
}

/// <summary>The words of the classes, and what follows from a class alone.</summary>
public static class SafetyClasses
{
    /// <summary>The classes and how they are written.</summary>
    public static WordList<SafetyClass> Words { get; } =
        new(
            (SafetyClass.X1, "X1"),
            (SafetyClass.X2, "X2"),
            (SafetyClass.X3, "X3"),
            (SafetyClass.Y1, "Y1"),
            (SafetyClass.Y2, "Y2"),
            (SafetyClass.Y3, "Y3"),
            (SafetyClass.Y4, "Y4"),
            (SafetyClass.X1Y1, "X1/Y1"),
            (SafetyClass.X1Y2, "X1/Y2"),
            (SafetyClass.X1Y4, "X1/Y4"),
            (SafetyClass.X2Y2, "X2/Y2"),
            (SafetyClass.X2Y3, "X2/Y3")
        );

    /// <summary>How a class is written; 'none' for none.</summary>
    public static string Name(this SafetyClass safety) => safety == SafetyClass.None ? "none" : Words.WordFor(safety);

    /// <summary>The class that a part has across the line, <see cref="SafetyClass.None"/> where it has none.</summary>
    public static SafetyClass AcrossTheLine(this SafetyClass safety) =>
        safety switch
        {
            SafetyClass.X1 or SafetyClass.X1Y1 or SafetyClass.X1Y2 or SafetyClass.X1Y4 => SafetyClass.X1,
            SafetyClass.X2 or SafetyClass.X2Y2 or SafetyClass.X2Y3 => SafetyClass.X2,
            SafetyClass.X3 => SafetyClass.X3,
            _ => SafetyClass.None,
        };

    /// <summary>The class that a part has to earth, <see cref="SafetyClass.None"/> where it has none.</summary>
    public static SafetyClass ToEarth(this SafetyClass safety) =>
        safety switch
        {
            SafetyClass.Y1 or SafetyClass.X1Y1 => SafetyClass.Y1,
            SafetyClass.Y2 or SafetyClass.X1Y2 or SafetyClass.X2Y2 => SafetyClass.Y2,
            SafetyClass.Y3 or SafetyClass.X2Y3 => SafetyClass.Y3,
            SafetyClass.Y4 or SafetyClass.X1Y4 => SafetyClass.Y4,
            _ => SafetyClass.None,
        };

    /// <summary>Whether a part is marked for both: one class across the line, another to earth, each with a voltage of its own.</summary>
    public static bool IsBoth(this SafetyClass safety) =>
        safety.AcrossTheLine() != SafetyClass.None && safety.ToEarth() != SafetyClass.None;

    /// <summary>Whether it stands from the mains to what can be touched.</summary>
    public static bool IsY(this SafetyClass safety) => safety.ToEarth() != SafetyClass.None;

    /// <summary>The class that a print tells, both ways round and with or without a stroke: 'X1Y2', 'Y2/X1'; null for anything
    /// else.</summary>
    public static SafetyClass? Read(string print)
    {
        if (Words.Means(print, out var known))
        {
            return known;
        }

        var letters = print.Replace("/", string.Empty, StringComparison.Ordinal).Replace("-", string.Empty, StringComparison.Ordinal);
        return letters.Length != 4 ? null
            : Words.Means($"{letters[..2]}/{letters[2..]}", out known) || Words.Means($"{letters[2..]}/{letters[..2]}", out known) ? known
            : null;
    }
}
