namespace Ohmstead.Report.Frame;

/// <summary>Where the files of a report go.</summary>
public interface IReportFiles
{
    /// <summary>Puts a file by. May be called from several threads, each path once.</summary>
    /// <param name="path">From the root of the report, with forward slashes.</param>
    /// <param name="bytes">All of it.</param>
    void Put(string path, ReadOnlySpan<byte> bytes);

    /// <summary>Starts a file that is written piece by piece and put by with <see cref="Put(string, FileStream)"/>.</summary>
    FileStream Start(string path);

    /// <summary>Puts a file by that was started here, and closes it.</summary>
    void Put(string path, FileStream started);
}
