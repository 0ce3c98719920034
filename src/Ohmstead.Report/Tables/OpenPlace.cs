using Ohmstead.Assessment.Fit;

namespace Ohmstead.Report.Tables;

/// <summary>A place that needs a part, on a page that was written before all boards were read: what is left in the drawer is known only
/// then.</summary>
/// <param name="At">How many bytes of the page come before what is still to be told.</param>
/// <param name="Place">What a part must fit.</param>
public readonly record struct OpenPlace(long At, FitPlace Place);
