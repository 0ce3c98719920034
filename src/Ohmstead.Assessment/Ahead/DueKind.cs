namespace Ohmstead.Assessment.Ahead;

/// <summary>Why something falls due.</summary>
public enum DueKind
{
    /// <summary>A lot of electrolytics must be formed again.</summary>
    Reforming,

    /// <summary>The shelf life of a lot ends.</summary>
    Shelf,

    /// <summary>A calibration runs out.</summary>
    Calibration,

    /// <summary>The estimated life of a fitted part may be used up.</summary>
    Life,

    /// <summary>A board is to be looked at again.</summary>
    LookAgain,

    /// <summary>Work has waited long enough to ask.</summary>
    Wait,

    /// <summary>What was lent is to come back.</summary>
    Loan,
}

/// <summary>Kinds of due things as people and programs read them.</summary>
public static class DueKinds
{
    /// <summary>In words.</summary>
    public static string Words(DueKind kind) =>
        kind switch
        {
            DueKind.Reforming => "form again",
            DueKind.Shelf => "shelf life",
            DueKind.Calibration => "calibration",
            DueKind.Life => "life",
            DueKind.LookAgain => "look again",
            DueKind.Loan => "loan",
            _ => "wait",
        };

    /// <summary>Whether it concerns a board; else it is a lot or an instrument.</summary>
    public static bool IsOfBoard(DueKind kind) => kind is DueKind.Life or DueKind.LookAgain or DueKind.Wait or DueKind.Loan;
}
