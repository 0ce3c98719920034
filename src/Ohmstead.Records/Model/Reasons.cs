namespace Ohmstead.Records.Model;

/// <summary>What was written as a reason: a dash or a full stop is none.</summary>
public static class Reasons
{
    /// <summary>Whether words were written, and not signs alone.</summary>
    public static bool SaySomething(this Written<string>? words)
    {
        if (words is null)
        {
            return false;
        }

        foreach (var character in words.Value)
        {
            if (char.IsLetter(character))
            {
                return true;
            }
        }

        return false;
    }
}
