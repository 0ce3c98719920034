namespace Ohmstead.Electronics.Substitution;

/// <summary>Room, lead spacing and mounting.</summary>
internal static class MechanicalRules
{
    private const string Aspect = "size";
    private const decimal FormingRoom = 0.5m;

    internal static void Add(List<FitReason> reasons, Pairing pair)
    {
        (CapacitorPlace place, CapacitorOffer offer) = pair;
        Room(reasons, "diameter", place.LargestDiameter, offer.Diameter);
        Room(reasons, "height", place.LargestHeight, offer.Height);
        CompareSize(reasons, "diameter", place.LargestDiameter is null ? place.OriginalDiameter : null, offer.Diameter);
        CompareSize(reasons, "height", place.LargestHeight is null ? place.OriginalHeight : null, offer.Height);
        if (place.Form is { } asked)
        {
            reasons.Add(Form(asked, offer.Form));
        }

        if (place.Pitch is { } holes && place.Form == offer.Form)
        {
            reasons.Add(Pitch(pair, holes));
        }
    }

    private static void Room(List<FitReason> reasons, string what, decimal? most, decimal? offered)
    {
        if (most is { } room)
        {
            reasons.Add(Room(what, room, offered));
        }
    }

    private static FitReason Room(string what, decimal room, decimal? offered) =>
        offered switch
        {
            null => FitReason.Missing(Aspect, () => $"its {what} is not known, there is room for {Figures.Text(room)} mm"),
            { } size when size > room => FitReason.Against(Aspect, () =>
                $"{what} {Figures.Text(size)} mm where there is room for {Figures.Text(room)} mm"
            ),
            { } size => FitReason.For(Aspect, () => $"{what} {Figures.Text(size)} mm, there is room for {Figures.Text(room)} mm"),
        };

    // The original fitted; whether there is room for more than it is not known.
    private static void CompareSize(List<FitReason> reasons, string what, decimal? original, decimal? offered)
    {
        if (original is { } was)
        {
            reasons.Add(CompareSize(what, was, offered));
        }
    }

    private static FitReason CompareSize(string what, decimal was, decimal? offered) =>
        offered switch
        {
            null => FitReason.Missing(Aspect, () => $"its {what} is not known, the original has {Figures.Text(was)} mm"),
            { } size when size > was => FitReason.Doubt(Aspect, () =>
                $"{what} {Figures.Text(size)} mm for {Figures.Text(was)} mm of the original: look whether there is room"
            ),
            { } size => FitReason.For(Aspect, () => $"{what} {Figures.Text(size)} mm, the original has {Figures.Text(was)} mm"),
        };

    private static FitReason Form(CapacitorForm asked, CapacitorForm? offered) =>
        (asked, offered) switch
        {
            (_, null) => FitReason.Missing("form", "its form is not known"),
            var (a, o) when a == o => FitReason.For("form", "the same form"),
            (CapacitorForm.Radial, CapacitorForm.Axial) => FitReason.Doubt(
                "form",
                "axial in a radial place: stand it up, insulate the long lead, the end joined to the case is minus"
            ),
            (CapacitorForm.Axial, CapacitorForm.Radial) => FitReason.Doubt(
                "form",
                "radial in an axial place: lay it down, insulate and fix the leads"
            ),
            (CapacitorForm.Chip, _) or (_, CapacitorForm.Chip) => FitReason.Against(
                "form",
                "leads and surface mounting do not go together"
            ),
            _ => FitReason.Doubt("form", "another form: it needs a mounting of its own"),
        };

    private static FitReason Pitch(Pairing pair, decimal holes) =>
        pair.Offer.Pitch switch
        {
            null => FitReason.Missing("pitch", pair, static p => $"its lead spacing is not known, the holes are {Holes(p)} mm apart"),
            { } leads when Math.Abs(leads - holes) <= FormingRoom => FitReason.For("pitch", pair, static p =>
                $"{Leads(p)} mm on holes of {Holes(p)} mm"
            ),
            _ when pair.Place.Form == CapacitorForm.SnapIn => FitReason.Against("pitch", pair, static p =>
                $"pins of {Leads(p)} mm do not go into holes of {Holes(p)} mm"
            ),
            _ => FitReason.Doubt("pitch", pair, static p =>
                $"{Leads(p)} mm on holes of {Holes(p)} mm: form the leads, first bend 1 to 2 mm from the seal"
            ),
        };

    private static string Leads(Pairing p) => Figures.Text(p.Offer.Pitch!.Value);

    private static string Holes(Pairing p) => Figures.Text(p.Place.Pitch!.Value);
}
