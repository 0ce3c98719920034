using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Nodes;

namespace Ohmstead.Collections;

/// <summary>Where the files of a collection come from: a folder of the disk, or a state that was kept of one.</summary>
internal interface IRecordFiles
{
    /// <summary>Whether there is anything of a name at the root; whoever reads it says what else it may be.</summary>
    bool Has(string name);

    /// <summary>Opens files for one worker.</summary>
    /// <param name="limits">How much of a file is read.</param>
    IFileBytes ForWorker(ReadingLimits limits);

    /// <summary>The pictures beside the records.</summary>
    IPictures Pictures(RunOptions options);
}

/// <summary>Opens files, for one thread at a time.</summary>
internal interface IFileBytes
{
    /// <summary>The bytes of a file, good until the next one is opened; or what is said of a file that is not looked into.</summary>
    /// <param name="path">The path from the root.</param>
    (ReadOnlyMemory<byte> Bytes, NodeReading? Refused) Open(string path);
}
