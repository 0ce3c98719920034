using System.Collections.Concurrent;
using System.Security.Cryptography;
using System.Text;
using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Collections;
using Ohmstead.Disk;
using Ohmstead.Pictures;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;

namespace Ohmstead.Publishing;

/// <summary>Makes the pictures of a report. The name of a made picture holds a digest of its source and of the settings, so one that was
/// made before is not made again.</summary>
/// <param name="pictures">Its pictures.</param>
/// <param name="target">The report.</param>
internal sealed class ReportPictures(FolderPictures pictures, ReportFolder target) : IReportPictures, IDisposable
{
    private const long LargePixels = 12_000_000;
    private const int DigestLength = 16;

    private static readonly Room Large = new(1200, 1600);
    private static readonly Room Small = new(480, 640);
    private static readonly byte[] Settings = Encoding.UTF8.GetBytes($"{PictureSizer.Settings}, {Large}, {Small}");

    private readonly ConcurrentDictionary<string, Lazy<Made>> made = new(StringComparer.Ordinal);
    private readonly SemaphoreSlim oneLarge = new(1);
    private int sized;
    private volatile bool lacksLibrary;

    /// <summary>How many pictures were decoded; all others were there already.</summary>
    public int Sized => sized;

    /// <summary>Whether pictures are missing because nothing on this machine opens any; those made before are there all the same.</summary>
    public bool LacksLibrary => lacksLibrary;

    /// <inheritdoc/>
    public ShownPicture? Find(string path) => At(path).Shown;

    /// <summary>Why a picture that passed its checks could not be made; null when it was, or when the checks told already.</summary>
    public PictureFault? Fault(string path) => At(path).Fault;

    /// <inheritdoc/>
    public void Dispose() => oneLarge.Dispose();

    private Made At(string path) => made.GetOrAdd(path, name => new Lazy<Made>(() => Make(name))).Value;

    private Made Make(string path)
    {
        if (pictures.At(path) != PictureState.Present || pictures.Fault(path) is not null)
        {
            return default;
        }

        byte[] source;
        try
        {
            source = Bytes(path);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return new(null, FolderPictures.Unreadable(problem));
        }

        using var stream = new MemoryStream(source, writable: false);
        if (!PictureLimits.Usual.Read(stream, path).Is(out var header, out var why))
        {
            return new(null, FolderPictures.FaultOf(why));
        }

        var (large, small) = Names(path, source, header.Form);
        if (
            Before(large) is { } largeBefore
            && (Fits(largeBefore.Width, largeBefore.Height) ? largeBefore : Before(small)) is { } smallBefore
        )
        {
            return new(new(largeBefore, smallBefore), null);
        }

        // Two of the largest at once would need the room of both.
        var isLarge = header.Pixels > LargePixels;
        if (isLarge)
        {
            oneLarge.Wait();
        }

        try
        {
            Interlocked.Increment(ref sized);
            if (!PictureSizer.Make(source, header.Form, Large, Small).Is(out var sizes, out why))
            {
                lacksLibrary |= why == PictureSizer.NoLibrary;
                return new(null, FolderPictures.FaultOf(why));
            }

            var shown = Put(large, sizes[0]);
            return new(new(shown, Fits(shown.Width, shown.Height) ? shown : Put(small, sizes[1])), null);
        }
        finally
        {
            if (isLarge)
            {
                oneLarge.Release();
            }
        }
    }

    private byte[] Bytes(string path)
    {
        using var file = pictures.Handle(path);
        using var bytes = new PageBuffer();
        FileBytes.Read(file, 0, (int)Math.Min(RandomAccess.GetLength(file), int.MaxValue), bytes);
        return bytes.Written.ToArray();
    }

    private PictureFile Put(string path, SizedPicture picture)
    {
        target.Put(path, picture.Bytes.Span);
        return new(path, picture.Width, picture.Height);
    }

    // What is small enough already needs no smaller one.
    private static bool Fits(int width, int height) => width <= Small.Width && height <= Small.Height;

    private PictureFile? Before(string path)
    {
        if (target.Kept(path) is not { } bytes)
        {
            return null;
        }

        using var stream = new MemoryStream(bytes, writable: false);
        if (!PictureHeader.Read(stream).Is(out var header, out _))
        {
            return null;
        }

        target.Put(path, bytes);
        return new(path, header.Width, header.Height);
    }

    private static (string Large, string Small) Names(string path, byte[] source, PictureForm form)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(Settings);
        hash.AppendData(source);
        var stem = $"{path[..^Path.GetExtension(path).Length]}.{Convert.ToHexStringLower(hash.GetHashAndReset())[..DigestLength]}";
        var extension = PictureSizer.ExtensionFor(form);
        return (stem + extension, $"{stem}.small{extension}");
    }

    private readonly record struct Made(ShownPicture? Shown, PictureFault? Fault);
}
