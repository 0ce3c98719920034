namespace Ohmstead.Pictures;

/// <summary>How a picture is kept in its file.</summary>
public enum PictureForm
{
    /// <summary>PNG.</summary>
    Png,

    /// <summary>JPEG.</summary>
    Jpeg,

    /// <summary>GIF; of a moving one the first picture is shown.</summary>
    Gif,

    /// <summary>WebP.</summary>
    Webp,
}
