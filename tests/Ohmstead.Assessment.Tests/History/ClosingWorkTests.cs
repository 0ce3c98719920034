using Ohmstead.Assessment.History;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Tests.History;

/// <summary>
/// Which work closes which trouble and makes which hazard safe, as a restorer would write it on a card beside the bench. Common practice;
/// where it hurts, local codes and licensed practice come first.
/// </summary>
public sealed class ClosingWorkTests
{
    // Major findings at a part, then at what stays: a joint, a track, a socket, a connector. A live chassis wants a test besides, an empty
    // place a part, and a fault of no known sort a proof: a rub with a cloth does not close what nobody has named.
    private const string Major = """
                      | live metal | spent part | joint | track | dirt | contact | other
        replaced      | yes        | yes        | yes   | no    | yes  | yes     | yes
        removed       | yes        | yes        | no    | no    | no   | no      | yes
        fitted        | no         | yes        | no    | no    | no   | no      | yes
        put back      | no         | no         | no    | no    | no   | no      | no
        re-formed     | no         | no         | no    | no    | no   | no      | yes
        cleaned       | no         | no         | no    | no    | yes  | yes     | no
        washed        | no         | no         | no    | no    | yes  | yes     | no
        re-soldered   | no         | no         | yes   | yes   | no   | yes     | yes
        repaired      | yes        | no         | yes   | yes   | yes  | yes     | yes
        adjusted      | no         | no         | no    | no    | no   | yes     | yes
        modified      | yes        | no         | yes   | yes   | yes  | yes     | yes
        made safe     | yes        | no         | yes   | no    | no   | no      | yes
        left alone    | no         | no         | no    | no    | no   | no      | no
        """;

    // What can hurt: a turn of a screw, solder and slow voltage do not close what nobody has named, and a contact is not rubbed safe.
    private const string Safety = """
                      | live metal | spent part | joint | track | dirt | contact | other
        replaced      | yes        | yes        | yes   | no    | yes  | yes     | yes
        removed       | yes        | yes        | no    | no    | no   | no      | yes
        fitted        | no         | yes        | no    | no    | no   | no      | yes
        put back      | no         | no         | no    | no    | no   | no      | no
        re-formed     | no         | no         | no    | no    | no   | no      | no
        cleaned       | no         | no         | no    | no    | yes  | no      | no
        washed        | no         | no         | no    | no    | yes  | no      | no
        re-soldered   | no         | no         | yes   | yes   | no   | no      | no
        repaired      | yes        | no         | yes   | yes   | yes  | yes     | yes
        adjusted      | no         | no         | no    | no    | no   | no      | no
        modified      | yes        | no         | yes   | yes   | yes  | yes     | yes
        made safe     | yes        | no         | yes   | no    | no   | no      | yes
        left alone    | no         | no         | no    | no    | no   | no      | no
        """;

    // Which hazards must go, which go with the part that they stand at, and what makes them safe for good.
    private const string Hazards = """
                            | must go | with the part | safe when
        mains               | no      | no            |
        charged capacitor   | no      | no            |
        picture tube        | no      | no            |
        switching supply    | no      | no            |
        hot parts           | no      | no            |
        lead and flux       | no      | no            |
        leaking cell        | yes     | yes           | removed, replaced
        crazed suppressor   | yes     | yes           | removed, replaced
        cell pack           | yes     | yes           | removed, replaced
        leaked electrolyte  | yes     | no            | cleaned, washed
        lithium cell        | no      | yes           | removed, replaced, made safe
        oil-filled part     | no      | yes           | removed, replaced, made safe
        selenium rectifier  | no      | yes           | removed, replaced, made safe
        asbestos            | no      | no            | removed, replaced, made safe
        beryllia            | no      | no            | removed, replaced, made safe
        mercury             | no      | no            | removed, replaced, made safe
        radium              | no      | no            | removed, replaced, made safe
        """;

    private static readonly Dictionary<string, Trouble> Troubles = new(StringComparer.Ordinal)
    {
        ["live metal"] = Trouble.LiveMetal,
        ["spent part"] = Trouble.SpentPart,
        ["joint"] = Trouble.Joint,
        ["track"] = Trouble.Track,
        ["dirt"] = Trouble.Dirt,
        ["contact"] = Trouble.Contact,
        ["other"] = Trouble.Other,
    };

    [Fact]
    public void Work_closes_a_major_finding_as_the_table_says() => Holds(Major, ObservedSeverity.Major);

    [Fact]
    public void Work_closes_what_can_hurt_as_the_table_says() => Holds(Safety, ObservedSeverity.Safety);

    [Fact]
    public void Taking_out_closes_nothing_at_what_stays() =>
        Assert.All(Enum.GetValues<Trouble>(), trouble =>
            Assert.Equal(trouble == Trouble.LiveMetal, ClosingWork.Closes(WorkKind.Removed, trouble, ObservedSeverity.Major, canGo: false))
        );

    [Fact]
    public void What_stays_is_answered_by_other_work_as_a_part_is() =>
        Assert.All(
            from work in Enum.GetValues<WorkKind>()
            where work != WorkKind.Removed
            from trouble in Enum.GetValues<Trouble>()
            select (work, trouble),
            pair =>
                Assert.Equal(
                    ClosingWork.Closes(pair.work, pair.trouble, ObservedSeverity.Major, canGo: true),
                    ClosingWork.Closes(pair.work, pair.trouble, ObservedSeverity.Major, canGo: false)
                )
        );

    [Fact]
    public void What_nobody_named_at_a_safety_part_goes_with_the_part_alone() =>
        Assert.Equal(
            [WorkKind.Replaced, WorkKind.Removed, WorkKind.Fitted],
            Enum.GetValues<WorkKind>().Where(ClosingWork.ClosesAtASafetyPart)
        );

    [Fact]
    public void A_hazard_is_made_safe_as_the_table_says()
    {
        var rows = Rows(Hazards);
        Assert.Equal(
            Enum.GetValues<HazardKind>().Select(kind => Vocabulary.Hazards.WordFor(kind)).Order(StringComparer.Ordinal),
            rows.Select(row => row[0]).Order(StringComparer.Ordinal)
        );
        Assert.All(rows, row =>
        {
            var kind = Enum.GetValues<HazardKind>().Single(kind => Vocabulary.Hazards.WordFor(kind) == row[0]);
            string[] safe =
            [
                .. Enum.GetValues<WorkKind>()
                    .Where(work => ClosingWork.MakesSafe(work, kind))
                    .Select(work => Vocabulary.Works.WordFor(work))
                    .Order(StringComparer.Ordinal),
            ];
            Assert.Equal(
                row[3].Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Order(StringComparer.Ordinal),
                safe
            );
            Assert.Equal((row[1], row[2]), (YesNo(ClosingWork.MustGo(kind)), YesNo(ClosingWork.GoesWithThePart(kind))));
        });
    }

    // What goes with a part is made safe by taking the part out.
    [Fact]
    public void What_goes_with_the_part_is_safe_when_the_part_is_out() =>
        Assert.All(Enum.GetValues<HazardKind>().Where(ClosingWork.GoesWithThePart), kind =>
            Assert.True(ClosingWork.MakesSafe(WorkKind.Removed, kind) && ClosingWork.MakesSafe(WorkKind.Replaced, kind))
        );

    // What can hurt is never closed by less than a major finding is.
    [Fact]
    public void What_closes_a_safety_finding_closes_a_major_one() =>
        Assert.All(
            from work in Enum.GetValues<WorkKind>()
            from trouble in Enum.GetValues<Trouble>()
            where ClosingWork.Closes(work, trouble, ObservedSeverity.Safety, canGo: true)
            select (work, trouble),
            pair => Assert.True(ClosingWork.Closes(pair.work, pair.trouble, ObservedSeverity.Major, canGo: true))
        );

    private static void Holds(string table, ObservedSeverity severity)
    {
        var rows = Rows(table);
        var heads = table.Split('\n')[0].Split('|', StringSplitOptions.TrimEntries)[1..];
        Assert.Equal(Enum.GetValues<Trouble>().Order(), heads.Select(head => Troubles[head]).Order());
        Assert.Equal(
            Enum.GetValues<WorkKind>().Select(kind => Vocabulary.Works.WordFor(kind)).Order(StringComparer.Ordinal),
            rows.Select(row => row[0]).Order(StringComparer.Ordinal)
        );
        string[] wrong =
        [
            .. from row in rows
            from cell in row[1..].Zip(heads)
            let work = Enum.GetValues<WorkKind>().Single(kind => Vocabulary.Works.WordFor(kind) == row[0])
            where cell.First != YesNo(ClosingWork.Closes(work, Troubles[cell.Second], severity, canGo: true))
            select $"{row[0]} of {cell.Second}: the table says {cell.First}",
        ];
        Assert.Empty(wrong);
    }

    private static string[][] Rows(string table) =>
        [.. table.Split('\n')[1..].Select(line => line.Split('|', StringSplitOptions.TrimEntries))];

    private static string YesNo(bool isSo) => isSo ? "yes" : "no";
}
