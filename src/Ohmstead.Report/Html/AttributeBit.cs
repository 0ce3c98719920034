namespace Ohmstead.Report.Html;

/// <summary>The bits of the attributes that are no text, number or fixed attribute.</summary>
internal static class AttributeBit
{
    public const ulong Class = 1UL << 48;
    public const ulong Id = 1UL << 49;
    public const ulong Href = 1UL << 50;
    public const ulong Source = 1UL << 51;
    public const ulong LabelledBy = 1UL << 52;
    public const ulong DescribedBy = 1UL << 53;
    public const ulong Policy = 1UL << 54;
    public const ulong Refresh = 1UL << 55;
}
