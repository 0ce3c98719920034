using Ohmstead.Electronics;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Workshops;

/// <summary>Whether an instrument's calibration held on a day. 12 months where the record says nothing else: common practice.</summary>
public static class CalibrationRules
{
    private const int UsualMonths = 12;

    /// <summary>Why the calibration did not hold on a day, or null when it did or the record knows no calibration at all.</summary>
    public static string? Lapse(Instrument instrument, DateOnly day)
    {
        if (instrument.Calibrations.Length == 0)
        {
            return null;
        }

        Calibration? inForce = null;
        foreach (var calibration in instrument.Calibrations)
        {
            if (calibration.Date.Value <= day && (inForce is null || calibration.Date.Value > inForce.Date.Value))
            {
                inForce = calibration;
            }
        }

        if (inForce is null)
        {
            return "before its first calibration on record";
        }

        var until = Until(inForce);
        return day > until ? $"its calibration ran out on {IsoDate.Text(until)}" : null;
    }

    /// <summary>The last day on which a calibration holds.</summary>
    public static DateOnly Until(Calibration calibration) =>
        calibration.Valid is { } valid
            ? CalendarSpan.After(calibration.Date.Value, valid.Value.Value)
            : calibration.Date.Value.AddMonths(UsualMonths);
}
