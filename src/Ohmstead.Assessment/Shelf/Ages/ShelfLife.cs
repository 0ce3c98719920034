using System.Globalization;
using Ohmstead.Electronics;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Shelf.Ages;

/// <summary>How long the parts of a lot have lain, and when they are due.</summary>
/// <param name="Since">The day they are counted from: formed again, made, or received.</param>
/// <param name="SinceWords">What happened that day, in words: "formed on 2026-05-09".</param>
/// <param name="Due">The last day of their shelf life.</param>
/// <param name="LifeWords">The shelf life in words.</param>
public sealed record ShelfLife(DateOnly Since, LazyText SinceWords, DateOnly Due, string LifeWords)
{
    /// <summary>Shelf life where the record says none. Makers disagree between 1 and 5 years; 3 years is the middle of what is published.
    /// Common practice.</summary>
    public const int UsualYears = 3;

    /// <summary>
    /// The longest shelf life that a record may give an electrolytic that dries out: no maker's text that was read speaks of more (Cornell
    /// Dubilier, letter of October 1993). Common practice.
    /// </summary>
    public const int MostYears = 10;

    /// <summary>
    /// The shelf life of a lot as seen on a day; null when nothing says how old the parts are, or when parts of their kind do not age on
    /// the shelf and the record says nothing else. Where a date code can mean several dates the latest is taken: nothing is called too old
    /// that need not be.
    /// </summary>
    public static ShelfLife? For(Lot lot, DateOnly day) => For(lot, day, LotDates.Read);

    /// <summary>The same where what the codes of lots mean is known already.</summary>
    internal static ShelfLife? For(Lot lot, DateOnly day, Func<Lot, DateOnly, LotDates> datesOf)
    {
        if ((lot.ShelfLife is null && !lot.Values.Kind.Value.DriesOut) || Start(lot, day, datesOf) is not (var since, var words))
        {
            return null;
        }

        if (
            lot.ShelfLife is { } written
            && lot.Values.Kind.Value.DriesOut
            && CalendarSpan.After(since, written.Value.Value) > since.AddYears(MostYears)
        )
        {
            return new(
                since,
                words,
                since.AddYears(MostYears),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{MostYears} years, the most that makers give, not the {written.Text} that is written"
                )
            );
        }

        return new(
            since,
            words,
            lot.ShelfLife is { } life ? CalendarSpan.After(since, life.Value.Value) : since.AddYears(UsualYears),
            lot.ShelfLife?.Text ?? string.Create(CultureInfo.InvariantCulture, $"{UsualYears} years, which is usual")
        );
    }

    /// <summary>The shelf life of a part that came from no lot: that of a lot of one piece, of which no more is known than its
    /// marks.</summary>
    public static ShelfLife? For(PartValues part, DateOnly day) =>
        For(new Lot(new("the new part", part.Kind.Text, part.Kind.Spot), part, part.Kind.Spot), day);

    /// <summary>Whether the shelf life is over on a day.</summary>
    public bool IsOverOn(DateOnly day) => day > Due;

    private static (DateOnly Since, LazyText Words)? Start(Lot lot, DateOnly day, Func<Lot, DateOnly, LotDates> datesOf)
    {
        if (lot.Formed is { } formed && formed.Value <= day)
        {
            return (formed.Value, LazyText.For(formed, static formed => "formed on " + formed.Text));
        }

        var dates = datesOf(lot, day);
        if (dates.Youngest is { } made)
        {
            var came = lot.Received is { } at && at.Value.Latest < made ? at.Value.Latest : made;
            return (came, Made(dates, lot.Values.DateCode!.Text));
        }

        return lot.Received is { } received
            ? (received.Value.Latest, LazyText.For(received, static received => "received " + received.Text))
            : null;
    }

    private static LazyText Made(LotDates dates, string code) =>
        new(() => $"made {dates.Made[^1].Value}, date code {code}{(dates.IsAmbiguous ? ", the latest it can mean" : string.Empty)}");
}
