using Ohmstead.Assessment.History;
using Ohmstead.Collections;
using Ohmstead.Records.Shapes;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Frame;
using static Ohmstead.Publishing.Tables.SharedKeys;

namespace Ohmstead.Publishing.Tables;

/// <summary>Every design.</summary>
internal static class DesignsTable
{
    /// <summary>Its columns.</summary>
    public static DataColumns<DesignUnits> Columns { get; } =
        new(
            "design row",
            "One design with how its units stand.",
            "{ design: barograph-servo, title: Barograph servo amplifier, units: 3, fit_to_run: 2, look_overdue: 0, page: "
                + "designs/barograph-servo.html }",
            new(Key.Id("design", "Its name.", "barograph-servo").Needed(), units => units.Design.Id.Value),
            new(Key.Text("title", "What it is.", "Barograph servo amplifier").Needed(), units => units.Design.Title.Value),
            new(Key.Text("maker", "Who made it.", "Tallis"), units => units.Design.Maker?.Value),
            new(Key.Text("revision", "The revision described.", "C"), units => units.Design.Revision?.Value),
            new(Key.Count("units", "How many boards are of it.", "3").Needed(), units => Number(units.Units.Count)),
            new(Key.Count("fit_to_run", "How many of them are fit to run.", "2").Needed(), units =>
                Number(units.Units.Count(unit => unit.State == BoardState.FitToRun))
            ),
            new(Key.Count("look_overdue", "Of how many of those the inspection is overdue.", "0").Needed(), units =>
                Number(units.Units.Count(unit => unit.IsFitButOverdue))
            ),
            new(Page, units => SiteAddress.Design(units.Design.Id.Value))
        );

    /// <summary>The designs of a collection.</summary>
    public static IEnumerable<DesignUnits> Rows(RunResult result) => DesignUnits.Group(result.Workshop.Designs.Values, result.Boards);
}
