namespace Ohmstead.Starting;

/// <summary>What became of one file.</summary>
internal enum FileFate
{
    /// <summary>It was written.</summary>
    Written,

    /// <summary>It was there, with the very same text.</summary>
    Same,

    /// <summary>Something of that name was there and was left alone.</summary>
    LeftAlone,
}
