using System.Globalization;
using Ohmstead.Electronics.Life;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Life;

/// <summary>How much and how warm a board runs, as far as estimates of life need it.</summary>
/// <param name="HoursPerYear">Hours of running a year.</param>
/// <param name="Phases">The temperatures of the air around the parts with the hours at each; one when the board always runs equally
/// warm.</param>
/// <param name="Origin">Where it is written, in words.</param>
public sealed record BoardDuty(double HoursPerYear, IReadOnlyList<DutyPhase> Phases, string Origin)
{
    /// <summary>Why nothing follows from it, or null.</summary>
    public string? Fault { get; init; }

    /// <summary>The duty of a board: its own, and the collection's where the board does not say it. Null when hours or temperature are not
    /// written.</summary>
    public static BoardDuty? For(BoardFile board, CollectionFile collection)
    {
        var (own, usual) = (board.Duty, collection.Duty);
        if (
            (own?.HoursPerYear ?? usual?.HoursPerYear) is not { Value: > 0 } hours
            || (own?.Temperature ?? usual?.Temperature) is not { } warm
        )
        {
            return null;
        }

        var origin = (own?.HoursPerYear, own?.Temperature) switch
        {
            (not null, not null) => "the board's duty",
            (null, null) => "the usual duty of the collection",
            _ => "the board's duty and the collection's",
        };

        // Hours at other temperatures are part of the hours that are written beside them.
        var times =
            own is { AtTimes.Length: > 0 } ? own.AtTimes
            : own is null or { HoursPerYear: null, Temperature: null } ? usual?.AtTimes ?? []
            : [];
        var rest = (long)hours.Value - times.Sum(part => (long)part.HoursPerYear.Value);
        List<DutyPhase> phases =
        [
            .. times
                .Where(part => part.HoursPerYear.Value > 0)
                .Select(part => new DutyPhase(part.HoursPerYear.Value, (double)part.Temperature.Value.Value)),
        ];
        if (rest > 0)
        {
            phases.Insert(0, new(rest, (double)warm.Value.Value));
        }

        return new(hours.Value, phases, origin)
        {
            Fault =
                rest < 0
                    ? string.Create(
                        CultureInfo.InvariantCulture,
                        $"the duty names {hours.Value - rest} h a year at other temperatures, more than its {hours.Text} h a year"
                    )
                    : null,
        };
    }
}
