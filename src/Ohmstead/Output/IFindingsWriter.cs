using Ohmstead.Collections;

namespace Ohmstead.Output;

/// <summary>Writes what a run found, in one form. It knows no check.</summary>
internal interface IFindingsWriter
{
    /// <summary>Writes the whole result.</summary>
    void Write(TextWriter target, RunResult result, CollectionFolder folder, int exitCode);
}
