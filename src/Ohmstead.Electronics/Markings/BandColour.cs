namespace Ohmstead.Electronics.Markings;

/// <summary>The colours of bands, dots and spots. The digits 0 to 9 are Black to White in this order.</summary>
public enum BandColour
{
    /// <summary>0.</summary>
    Black,

    /// <summary>1.</summary>
    Brown,

    /// <summary>2.</summary>
    Red,

    /// <summary>3.</summary>
    Orange,

    /// <summary>4.</summary>
    Yellow,

    /// <summary>5.</summary>
    Green,

    /// <summary>6.</summary>
    Blue,

    /// <summary>7; also called purple.</summary>
    Violet,

    /// <summary>8.</summary>
    Grey,

    /// <summary>9.</summary>
    White,

    /// <summary>A tenth as a multiplier, 5 % as a tolerance; never a digit.</summary>
    Gold,

    /// <summary>A hundredth as a multiplier, 10 % as a tolerance; never a digit.</summary>
    Silver,

    /// <summary>A thousandth as a multiplier; never a digit.</summary>
    Pink,
}
