namespace Ohmstead.Devices;

/// <summary>How a serial port is set.</summary>
/// <param name="Speed">Bits a second.</param>
/// <param name="DataBits">7 or 8.</param>
/// <param name="Parity">n for none, e for even, o for odd.</param>
/// <param name="StopBits">1 or 2.</param>
internal sealed record SerialSettings(int Speed, int DataBits, char Parity, int StopBits)
{
    /// <summary>What most meters come with.</summary>
    public static SerialSettings Usual { get; } = new(9600, 8, 'n', 1);
}
