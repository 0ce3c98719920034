namespace Ohmstead.Electronics.Substitution;

/// <summary>Room, lead spacing and mounting.</summary>
internal static class MechanicalRules
{
    private const string Aspect = "size";
    private const decimal FormingRoom = 0.5m;

    internal static IEnumerable<Reason> Reasons(CapacitorPlace place, CapacitorOffer offer) =>
    [
        .. Room("diameter", place.LargestDiameter, offer.Diameter), .. Room("height", place.LargestHeight, offer.Height),
        .. Beside("diameter", place.LargestDiameter is null ? place.OriginalDiameter : null, offer.Diameter),
        .. Beside("height", place.LargestHeight is null ? place.OriginalHeight : null, offer.Height),
        .. Form(place, offer), .. Pitch(place, offer),
    ];

    private static IEnumerable<Reason> Room(string what, decimal? most, decimal? offered)
    {
        if (most is not { } room)
        {
            yield break;
        }

        yield return offered switch
        {
            null => Reason.Missing(Aspect, () => $"its {what} is not known, there is room for {Figures.Text(room)} mm"),
            { } size when size > room =>
                Reason.Against(Aspect, () => $"{what} {Figures.Text(size)} mm where there is room for {Figures.Text(room)} mm"),
            { } size => Reason.For(Aspect, () => $"{what} {Figures.Text(size)} mm, there is room for {Figures.Text(room)} mm"),
        };
    }

    // The original fitted; whether there is room for more than it is not known.
    private static IEnumerable<Reason> Beside(string what, decimal? original, decimal? offered)
    {
        if (original is not { } was)
        {
            yield break;
        }

        yield return offered switch
        {
            null => Reason.Missing(Aspect, () => $"its {what} is not known, the original has {Figures.Text(was)} mm"),
            { } size when size > was =>
                Reason.Doubt(Aspect, () => $"{what} {Figures.Text(size)} mm for {Figures.Text(was)} mm of the original: look whether there is room"),
            { } size => Reason.For(Aspect, () => $"{what} {Figures.Text(size)} mm, the original has {Figures.Text(was)} mm"),
        };
    }

    private static IEnumerable<Reason> Form(CapacitorPlace place, CapacitorOffer offer)
    {
        if (place.Form is not { } asked)
        {
            yield break;
        }

        yield return (asked, offer.Form) switch
        {
            (_, null) => Reason.Missing("form", "its form is not known"),
            var (a, o) when a == o => Reason.For("form", "the same form"),
            (CapacitorForm.Radial, CapacitorForm.Axial) =>
                Reason.Doubt("form", "axial in a radial place: stand it up, insulate the long lead, the end joined to the case is minus"),
            (CapacitorForm.Axial, CapacitorForm.Radial) =>
                Reason.Doubt("form", "radial in an axial place: lay it down, insulate and fix the leads"),
            (CapacitorForm.Chip, _) or (_, CapacitorForm.Chip) => Reason.Against("form", "leads and surface mounting do not go together"),
            _ => Reason.Doubt("form", "another form: it needs a mounting of its own"),
        };
    }

    private static IEnumerable<Reason> Pitch(CapacitorPlace place, CapacitorOffer offer)
    {
        if (place.Pitch is not { } holes || place.Form != offer.Form)
        {
            yield break;
        }

        yield return offer.Pitch switch
        {
            null => Reason.Missing("pitch", () => $"its lead spacing is not known, the holes are {Figures.Text(holes)} mm apart"),
            { } leads when Math.Abs(leads - holes) <= FormingRoom =>
                Reason.For("pitch", () => $"{Figures.Text(leads)} mm on holes of {Figures.Text(holes)} mm"),
            _ when place.Form == CapacitorForm.SnapIn =>
                Reason.Against("pitch", () => $"pins of {Figures.Text(offer.Pitch.Value)} mm do not go into holes of {Figures.Text(holes)} mm"),
            { } leads => Reason.Doubt("pitch",
                () => $"{Figures.Text(leads)} mm on holes of {Figures.Text(holes)} mm: form the leads, first bend 1 to 2 mm from the seal"),
        };
    }
}
