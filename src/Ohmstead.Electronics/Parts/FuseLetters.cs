namespace Ohmstead.Electronics.Parts;

/// <summary>The letters of fuses, and their sizes.</summary>
public static class FuseLetters
{
    /// <summary>The letters of speed, the quickest first.</summary>
    public static WordList<FuseSpeed> Speeds { get; } =
        new((FuseSpeed.FF, "FF"), (FuseSpeed.F, "F"), (FuseSpeed.M, "M"), (FuseSpeed.T, "T"), (FuseSpeed.TT, "TT"));

    /// <summary>The letters of breaking capacity, the lowest first.</summary>
    public static WordList<FuseBreaking> Breakings { get; } = new((FuseBreaking.L, "L"), (FuseBreaking.E, "E"), (FuseBreaking.H, "H"));

    /// <summary>The standards that a fuse is rated by.</summary>
    public static WordList<FuseSystem> Systems { get; } = new((FuseSystem.IEC, "IEC 60127"), (FuseSystem.UL, "UL 248-14"));

    /// <summary>The sizes, in the words of the trade.</summary>
    public static WordList<FuseSize> Sizes { get; } =
        new(
            (FuseSize.FiveByTwenty, "5 x 20 mm"),
            (FuseSize.SixByThirtyTwo, "6.3 x 32 mm"),
            (FuseSize.SixByTwentyFive, "6.3 x 25 mm"),
            (FuseSize.FiveByTwentyFive, "5 x 25 mm"),
            (FuseSize.FiveByThirty, "5 x 30 mm"),
            (FuseSize.SubMiniature, "sub-miniature"),
            (FuseSize.Chip, "chip"),
            (FuseSize.Other, "other")
        );

    /// <summary>The speed of a letter, or null.</summary>
    public static FuseSpeed? Speed(string letters) => Speeds.Means(letters, out var speed) ? speed : null;

    /// <summary>The breaking capacity of a letter, or null.</summary>
    public static FuseBreaking? Breaking(string letter) => Breakings.Means(letter, out var breaking) ? breaking : null;

    /// <summary>A speed in words.</summary>
    public static string Words(FuseSpeed speed) =>
        speed switch
        {
            FuseSpeed.FF => "very quick",
            FuseSpeed.F => "quick",
            FuseSpeed.M => "medium",
            FuseSpeed.T => "slow",
            FuseSpeed.TT => "very slow",
        };

    /// <summary>A breaking capacity in words.</summary>
    public static string Words(FuseBreaking breaking) =>
        breaking switch
        {
            FuseBreaking.L => "of low breaking capacity",
            FuseBreaking.E => "of enhanced breaking capacity",
            FuseBreaking.H => "of high breaking capacity",
        };
}
