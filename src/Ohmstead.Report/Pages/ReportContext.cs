using Ohmstead.Assessment.Workshops;

namespace Ohmstead.Report.Pages;

/// <summary>What every page of a report knows.</summary>
/// <param name="Workshop">The workshop of the collection.</param>
/// <param name="Boards">The numbers of all boards, so that a reference to one becomes a link.</param>
/// <param name="Today">The day of the report.</param>
/// <param name="Version">The version of the program.</param>
public sealed record ReportContext(Workshop Workshop, IReadOnlySet<string> Boards, DateOnly Today, string Version);
