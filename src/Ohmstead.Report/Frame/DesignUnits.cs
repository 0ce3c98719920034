using Ohmstead.Assessment.Boards;
using Ohmstead.Records.Model;

namespace Ohmstead.Report.Frame;

/// <summary>A design with its units.</summary>
/// <param name="Design">The design.</param>
/// <param name="Units">The boards of this design, in order of number.</param>
public sealed record DesignUnits(DesignFile Design, IReadOnlyList<BoardSummary> Units)
{
    /// <summary>Units whose places are set side by side, in order of number.</summary>
    public IReadOnlyList<UnitPlaces> Compared { get; init; } = [];

    /// <summary>All designs of a workshop with their units, in order of name.</summary>
    public static IReadOnlyList<DesignUnits> Group(IEnumerable<DesignFile> designs, IReadOnlyList<BoardSummary> boards)
    {
        var units = boards.Where(board => board.Design is not null).ToLookup(board => board.Design!, StringComparer.Ordinal);
        return
        [
            .. designs
                .OrderBy(design => design.Id.Value, StringComparer.Ordinal)
                .Select(design => new DesignUnits(
                    design,
                    [.. units[design.Id.Value].OrderBy(board => board.Id.Value, StringComparer.Ordinal)]
                )),
        ];
    }

    /// <summary>For each place the units from which its original part has gone, in order of number.</summary>
    public ILookup<string, BoardSummary> RenewedByPlace() =>
        Units
            .SelectMany(unit => unit.Renewed.Select(place => (place, unit)))
            .ToLookup(pair => pair.place, pair => pair.unit, StringComparer.Ordinal);
}
