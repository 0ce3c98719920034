namespace Ohmstead.Tests.Support;

/// <summary>A repository in which two people work on one board, and the texts that they write.</summary>
internal static class TwoPeople
{
    /// <summary>A repository with one board, in which records are merged by their entries; the program is found by its name.</summary>
    /// <param name="path">Where the board lies.</param>
    public static ScratchRepository Make(string path = "boards/SP-0001.md")
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() || OperatingSystem.IsMacOS(), "a script is put into the path as a shell runs it");
        var made = ScratchRepository.Empty();
        made.Program($"exec {Child.Program} \"$@\"");
        made.Write(".gitattributes", "* text=auto eol=lf\nboards/*.md merge=ohmstead\n/stock.yaml merge=ohmstead\n");
        made.Write(path, Board());
        Assert.Equal(0, made.Run("ohmstead", "settle", "--set-up"));
        made.Commit("begun");
        return made;
    }

    /// <summary>A board with visits.</summary>
    public static string Board(params string[] visits) =>
        $"---\nboard: SP-0001\ntitle: Tide-gauge logger\nbench:\n{Visit("2026-02-14", "TS", "J1")}{string.Concat(visits)}---\n\n"
        + "## Story\nIt came wet.\n";

    /// <summary>A visit with a finding.</summary>
    public static string Visit(string day, string by, string place, string what = "green") =>
        $"  - date: {day}\n    by: {by}\n    found:\n      - {{ at: {place}, what: {what}, severity: minor }}\n";
}
