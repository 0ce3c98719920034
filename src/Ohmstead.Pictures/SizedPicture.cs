namespace Ohmstead.Pictures;

/// <summary>A picture made for a page: upright, and with nothing in its file but the picture.</summary>
/// <param name="Bytes">The file.</param>
/// <param name="Width">Its width in pixels.</param>
/// <param name="Height">Its height in pixels.</param>
public sealed record SizedPicture(ReadOnlyMemory<byte> Bytes, int Width, int Height);

/// <summary>The room that a picture is made to fit in; a smaller one stays as small as it is.</summary>
/// <param name="Width">The greatest width in pixels, once upright.</param>
/// <param name="Height">The greatest height in pixels, once upright.</param>
public readonly record struct Room(int Width, int Height);
