using Ohmstead.Report.Html;

namespace Ohmstead.Report.Pages;

/// <summary>A place of a page at which something is told once, for those who are led there.</summary>
/// <param name="Words">What the place is called: C12, or a reading by its part and day.</param>
/// <param name="Id">Its anchor.</param>
internal readonly record struct ToldAt(string Words, ElementId Id);
