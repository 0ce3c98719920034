using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;
using Ohmstead.Disk;
using Ohmstead.Tests.Support;

namespace Ohmstead.Machine.Tests.Disk;

public sealed partial class FolderLockTests
{
    [Fact]
    public void A_folder_that_is_locked_is_nobody_elses_until_it_is_let_go()
    {
        using var copy = CollectionCopy.Empty();
        using var second = Folder.Open(copy.Root);
        using (var first = Folder.Open(copy.Root))
        {
            Assert.True(first.TryLock());
            Assert.False(second.TryLock());
        }

        Assert.True(second.TryLock());
    }

    // A child has copies of all handles from the moment when it is begun until it becomes another program.
    [Fact]
    public void A_lock_that_is_let_go_is_gone_although_a_child_has_a_copy_of_the_handle()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "looks for the handle where Linux lists them");
        using var copy = CollectionCopy.Empty();
        var first = Folder.Open(copy.Root);
        Assert.True(first.TryLock());
        var number = Directory
            .EnumerateFileSystemEntries("/proc/self/fd")
            .Where(entry => new FileInfo(entry).LinkTarget == first.FullName)
            .Select(entry => int.Parse(Path.GetFileName(entry), System.Globalization.CultureInfo.InvariantCulture))
            .First();
        using var ofChild = new SafeFileHandle(Copy(number), ownsHandle: true);
        Assert.False(ofChild.IsInvalid);
        first.Dispose();

        using var second = Folder.Open(copy.Root);
        Assert.True(second.TryLock());
    }

    [LibraryImport("libc", EntryPoint = "dup", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Copy(int handle);
}
