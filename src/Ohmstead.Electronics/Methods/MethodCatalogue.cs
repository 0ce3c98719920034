namespace Ohmstead.Electronics.Methods;

/// <summary>Ways of working on old boards with their usual values. Each says where its figures come from; makers' sheets come
/// first.</summary>
public static class MethodCatalogue
{
    private static readonly Source Workshop = Source.CommonPractice;

    private static readonly Source Alloys = Source.Published(
        "Indium Corporation, alloy table and Hand Soldering Tip Temperatures",
        "melting and tip; times and phenolic paper common practice"
    );

    private static readonly Source LeadFree = Source.Published(
        "Indium Corporation, alloy table and Hand Soldering Tip Temperatures; EPTAC, Soldering Iron Tip Temperature",
        "melting and tip"
    );

    private const string OnPhenolicPaper = "at most 320 °C and 3 s, with any iron or vacuum: pads lift";

    private const string Rosin = "rosin smoke sensitises the lungs: draw it off";

    private const string Crust =
        "the white crust is alkaline, about pH 11.5; what is wet or fresh is potassium hydroxide, about pH 12, and more where it is "
        + "strong: gloves and goggles";

    /// <summary>How long a washed board dries at room temperature, in hours, where nothing else is known: the longest of the usual
    /// values.</summary>
    public const decimal DryAtRoomHours = 72m;

    /// <summary>How long what was wiped with a solvent dries at room temperature, in hours: until nothing smells, taken as the rest of the
    /// evening.</summary>
    public const decimal DryOfSolventHours = 2m;

    /// <summary>All methods, cleaning first.</summary>
    public static IReadOnlyList<WorkMethod> All { get; } =
    [
        WorkMethod.Create(
            "isopropanol",
            "flux, grease and the last rinse: 2-propanol on a brush or a cloth",
            Workshop,
            [
                ("strength", "99 %, for the last rinse 99.7 % or more; 70 % leaves water behind"),
                ("flash point", "12 °C"),
                ("dry", "until nothing smells, then as after water where any was in it"),
            ],
            "no flame, no iron, no spark near it; ventilate",
            "try first on polystyrene, inks, celluloid, vinyl, black wrinkle paint and transfers",
            "never acetone or butanone instead: they dissolve polystyrene, acrylic, ABS, celluloid and most inks, and harm seals and "
                + "sleeves",
            "no cleaner with chlorine or bromine in it: halides pass the rubber seal of electrolytics and corrode them (Nippon "
                + "Chemi-Con FAQ)"
        ) with
        {
            Words = ["2-propanol", "propan-2-ol", "isopropyl alcohol", "ipa"],
            MustDry = true,
            DryHours = DryOfSolventHours,
        },
        WorkMethod.Create(
            "water",
            "rinsing salts away: deionised water",
            Workshop,
            [
                ("temperature", "at most 50 °C; 45 °C where there is wax or paper"),
                ("before", "take off cells, transformers, loudspeakers and meters"),
            ],
            "nothing is given power before it is dry and its insulation was measured"
        ) with
        {
            Words = ["deionised", "deionized", "distilled"],
            MustDry = true,
        },
        WorkMethod.Create(
            "detergent",
            "crusts of leaked electrolyte: water and a mild detergent, then deionised water",
            Workshop,
            [("pH", "7 to 9"), ("rinse", "deionised water, then isopropanol")],
            "the crust conducts and corrodes: gloves, and no test before it is gone"
        ) with
        {
            Words = ["soap"],
            MustDry = true,
        },
        WorkMethod.Create(
            "weak acid",
            "alkaline crust of nickel-cadmium cells: vinegar or 5 % acetic acid, then water, then isopropanol",
            Workshop,
            [("strength", "5 %"), ("rinse", "deionised water, then isopropanol")],
            Crust,
            "baking soda is for leaked acid, not for this"
        ) with
        {
            Words = ["vinegar", "acetic", "citric"],
            MustDry = true,
        },
        WorkMethod.Create(
            "ultrasonic bath",
            "boards that bear it, in a bath",
            Workshop,
            [("temperature", "at most 50 °C")],
            "not for open relays, crystals, meters or old wire bonds"
        ) with
        {
            Words = ["ultrasound", "ultrasonic"],
            MustDry = true,
        },
        WorkMethod.Create(
            "drying",
            "before any power after a wash; no standard gives these figures",
            Workshop,
            [
                ("moving air, 60 to 70 °C", "1 to 4 h"),
                ("40 to 50 °C", "24 h"),
                ("room temperature", "72 h"),
                ("at most", "50 to 60 °C with polystyrene, wax, selenium or cells on it"),
                ("then", "insulation of 10 to 100 MΩ or more between the rails before power"),
            ],
            "warm solvent vapour burns: nothing wet with isopropanol goes into an oven",
            "clean before you warm it: heat fixes flux; it dries surfaces and the pores of the board, what soaked into a plastic "
                + "package needs weeks at 40 °C (J-STD-033)"
        ) with
        {
            Words = ["oven", "dried"],
        },
        WorkMethod.Create(
            "tin-lead solder",
            "joints that were made with lead",
            Alloys,
            [
                ("alloy melts", "Sn63Pb37 at 183 °C, Sn60Pb40 at 183 to about 190 °C (188 to 191 by list)"),
                ("tip", "315 to 350 °C"),
                ("contact", "1 to 3 s, at most 5 s"),
                ("on phenolic paper", OnPhenolicPaper),
            ],
            "rosin smoke sensitises the lungs: draw it off (limits in the UK: 0.05 mg/m³ over 8 h, 0.15 mg/m³ over 15 min; HSE SIM "
                + "03/2002/26)",
            "lead: wash hands, no food at the bench"
        ) with
        {
            Words = ["sn63", "sn60", "leaded"],
        },
        WorkMethod.Create(
            "silver-bearing solder",
            "ceramic terminal strips with silver plating",
            Alloys,
            [("alloy melts", "Sn62Pb36Ag2 at 179 °C"), ("tip", "315 to 350 °C")],
            "ordinary solder takes the silver off: use no other there",
            Rosin + "; lead: wash hands"
        ) with
        {
            Words = ["sn62"],
        },
        WorkMethod.Create(
            "lead-free solder",
            "joints that were made without lead",
            LeadFree,
            [
                ("alloy melts", "SAC305 at 217 to 220 °C, Sn99.3Cu0.7 at 227 °C"),
                ("tip", "315 °C by a maker of solder, 371 to 398 °C by a training house (343 °C for small joints): begin low"),
                ("on phenolic paper", OnPhenolicPaper),
            ],
            "do not mix: take lead off with braid first, and the reverse",
            Rosin
        ) with
        {
            Words = ["sac305"],
        },
        WorkMethod.Create(
            "vacuum desoldering",
            "parts that are to live, and boards with plated holes",
            Workshop,
            [
                ("tip", "350 to 400 °C, not on phenolic paper"),
                ("dwell", "1 to 2 s before the vacuum, 30 s of rest between tries"),
                ("on phenolic paper", OnPhenolicPaper),
            ],
            Rosin
        ) with
        {
            Words = ["desoldering station", "vacuum"],
        },
        WorkMethod.Create(
            "cutting out",
            "a part that is condemned: clip its leads, then clear the holes one by one",
            Workshop,
            [("holes", "one lead at a time, with braid of 1.5 to 2.5 mm and flux")],
            "eye protection: clipped leads fly",
            "photograph and mark the way round first; keep the part in a bag"
        ) with
        {
            Words = ["clipped", "cut out"],
        },
        WorkMethod.Create(
            "low-melting alloy",
            "taking out parts with many legs",
            Alloys,
            [("alloy melts", "58Bi42Sn at 138 °C")],
            "it must come off again to the last trace: joints with it are weak and melt early"
        ) with
        {
            Words = ["bismuth"],
        },
        WorkMethod.Create(
            "static-safe handling",
            "MOS memories and logic, JFETs and MOSFETs, early PMOS above all",
            Source.Published(
                "ANSI/ESD S20.20-2014, as told by Desco; ESD STM 13.1-2000, as told by the ESD Association",
                "strap and surface; tip"
            ),
            [
                ("wrist strap, worn", "under 35 MΩ, with 1 MΩ in its cord"),
                ("work surface", "under 1 GΩ to ground"),
                ("tip of the iron to ground", "under 2 Ω; 10 Ω when worn and 20 mV are from memory"),
            ],
            "no wrist strap on work that may be live"
        ) with
        {
            Words = ["antistatic", "esd"],
        },
    ];

    /// <summary>The method that a text speaks of, or null: its name or one of its other words stands in it.</summary>
    public static WorkMethod? In(string text) =>
        All.FirstOrDefault(method => method.Words.Prepend(method.Name).Any(word => IsWord(text, word)));

    private static bool IsWord(string text, string word)
    {
        for (
            var at = text.IndexOf(word, StringComparison.OrdinalIgnoreCase);
            at >= 0;
            at = text.IndexOf(word, at + 1, StringComparison.OrdinalIgnoreCase)
        )
        {
            var end = at + word.Length;
            if ((at == 0 || !char.IsLetter(text[at - 1])) && (end == text.Length || !char.IsLetter(text[end])))
            {
                return true;
            }
        }

        return false;
    }
}
