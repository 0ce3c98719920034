namespace Ohmstead.Electronics.Substitution;

/// <summary>Room, lead spacing and mounting.</summary>
internal static class MechanicalRules
{
    private const string Aspect = "size";
    private const decimal FormingRoom = 0.5m;

    internal static void Add(List<Reason> reasons, Pairing pair)
    {
        (CapacitorPlace place, CapacitorOffer offer) = pair;
        Room(reasons, "diameter", place.LargestDiameter, offer.Diameter);
        Room(reasons, "height", place.LargestHeight, offer.Height);
        Beside(reasons, "diameter", place.LargestDiameter is null ? place.OriginalDiameter : null, offer.Diameter);
        Beside(reasons, "height", place.LargestHeight is null ? place.OriginalHeight : null, offer.Height);
        if (place.Form is { } asked)
        {
            reasons.Add(Form(asked, offer.Form));
        }

        if (place.Pitch is { } holes && place.Form == offer.Form)
        {
            reasons.Add(Pitch(pair, holes));
        }
    }

    private static void Room(List<Reason> reasons, string what, decimal? most, decimal? offered)
    {
        if (most is { } room)
        {
            reasons.Add(Room(what, room, offered));
        }
    }

    private static Reason Room(string what, decimal room, decimal? offered) =>
        offered switch
        {
            null => Reason.Missing(Aspect, () => $"its {what} is not known, there is room for {Figures.Text(room)} mm"),
            { } size when size > room => Reason.Against(Aspect, () =>
                $"{what} {Figures.Text(size)} mm where there is room for {Figures.Text(room)} mm"
            ),
            { } size => Reason.For(Aspect, () => $"{what} {Figures.Text(size)} mm, there is room for {Figures.Text(room)} mm"),
        };

    // The original fitted; whether there is room for more than it is not known.
    private static void Beside(List<Reason> reasons, string what, decimal? original, decimal? offered)
    {
        if (original is { } was)
        {
            reasons.Add(Beside(what, was, offered));
        }
    }

    private static Reason Beside(string what, decimal was, decimal? offered) =>
        offered switch
        {
            null => Reason.Missing(Aspect, () => $"its {what} is not known, the original has {Figures.Text(was)} mm"),
            { } size when size > was => Reason.Doubt(Aspect, () =>
                $"{what} {Figures.Text(size)} mm for {Figures.Text(was)} mm of the original: look whether there is room"
            ),
            { } size => Reason.For(Aspect, () => $"{what} {Figures.Text(size)} mm, the original has {Figures.Text(was)} mm"),
        };

    private static Reason Form(CapacitorForm asked, CapacitorForm? offered) =>
        (asked, offered) switch
        {
            (_, null) => Reason.Missing("form", "its form is not known"),
            var (a, o) when a == o => Reason.For("form", "the same form"),
            (CapacitorForm.Radial, CapacitorForm.Axial) => Reason.Doubt(
                "form",
                "axial in a radial place: stand it up, insulate the long lead, the end joined to the case is minus"
            ),
            (CapacitorForm.Axial, CapacitorForm.Radial) => Reason.Doubt(
                "form",
                "radial in an axial place: lay it down, insulate and fix the leads"
            ),
            (CapacitorForm.Chip, _) or (_, CapacitorForm.Chip) => Reason.Against("form", "leads and surface mounting do not go together"),
            _ => Reason.Doubt("form", "another form: it needs a mounting of its own"),
        };

    private static Reason Pitch(Pairing pair, decimal holes) =>
        pair.Offer.Pitch switch
        {
            null => Reason.Missing("pitch", pair, static p => $"its lead spacing is not known, the holes are {Holes(p)} mm apart"),
            { } leads when Math.Abs(leads - holes) <= FormingRoom => Reason.For("pitch", pair, static p =>
                $"{Leads(p)} mm on holes of {Holes(p)} mm"
            ),
            _ when pair.Place.Form == CapacitorForm.SnapIn => Reason.Against("pitch", pair, static p =>
                $"pins of {Leads(p)} mm do not go into holes of {Holes(p)} mm"
            ),
            _ => Reason.Doubt("pitch", pair, static p =>
                $"{Leads(p)} mm on holes of {Holes(p)} mm: form the leads, first bend 1 to 2 mm from the seal"
            ),
        };

    private static string Leads(Pairing p) => Figures.Text(p.Offer.Pitch!.Value);

    private static string Holes(Pairing p) => Figures.Text(p.Place.Pitch!.Value);
}
