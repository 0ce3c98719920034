namespace Ohmstead.Fuzz;

/// <summary>Something that must hold for every input does not hold for this one.</summary>
internal sealed class FaultFoundException(string message) : Exception(message)
{
    /// <summary>Fails unless something holds.</summary>
    public static void Unless(bool holds, string message)
    {
        if (!holds)
        {
            throw new FaultFoundException(message);
        }
    }
}
