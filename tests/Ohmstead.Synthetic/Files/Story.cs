using Ohmstead.Synthetic.Parts;
using Ohmstead.Synthetic.Text;

namespace Ohmstead.Synthetic.Files;

/// <summary>Writes about one kilobyte of Markdown below the front matter.</summary>
public static class Story
{
    private const int Length = 950;

    /// <summary>Adds the story of a board, with references that become links.</summary>
    public static LineWriter Append(LineWriter file, IReadOnlyList<SyntheticPart> parts, int number, SeededRandom random)
    {
        file.Line("---").Line().Line("## Story").Line();
        var written = 0;
        while (written < Length)
        {
            var line = random.Between(1, 7) switch
            {
                1 => $"The board came in dusty; **{random.Pick(parts).Ref}** had been changed before, and not well.",
                2 => $"- {random.Pick(parts).Ref} was measured twice, warm and cold, with the same figure both times.",
                3 => $"{CollectionPlan.BoardId(random.Between(1, number))} showed the same fault and was used for comparison at the bench.",
                4 => $"The joint at {random.Pick(parts).Ref} was opened, cleaned and made again before {random.Pick(parts).Ref} was "
                    + "touched.",
                5 => $"> *Drawing and board differ at {random.Pick(parts).Ref}; the board was taken as right.*",
                6 => "After a night in the warm cupboard it was left to settle, and the pen stood still for the first time in years.",
                _ => $"Both rails were watched while {random.Pick(parts).Ref} came up to temperature; nothing moved by more than a digit.",
            };
            file.Line(line).Line();
            written += line.Length + 2;
        }

        return file;
    }
}
