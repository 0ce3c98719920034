using System.Collections.Frozen;

namespace Ohmstead.Machine.Tests.Workflows;

/// <summary>The actions our workflows use, pinned as they are used, each with the inputs that its documentation (action.yml)
/// names.</summary>
internal static class KnownActions
{
    public const string Checkout = "actions/checkout@34e114876b0b11c390a56381ad16ebd13914f8d5";
    public const string SetupDotnet = "actions/setup-dotnet@67a3573c9a986a3f9c594539f4ab511d57bb3ce9";
    public const string UploadArtifact = "actions/upload-artifact@ea165f8d65b6e75b540449e92b4886f43607fa02";
    public const string DownloadArtifact = "actions/download-artifact@d3f86a106a0bac45b974a628896c90dbdf5c8093";
    public const string AttestProvenance = "actions/attest-build-provenance@e8998f949152b193b063cb0ec769d69d929409be";
    public const string AttestMaterials = "actions/attest-sbom@bd218ad0dbcb3e146bd073d1d9c6d78e08aa8a0b";
    public const string UploadPages = "actions/upload-pages-artifact@56afc609e74202658d3ffba0e8f6dda462b719fa";
    public const string DeployPages = "actions/deploy-pages@d6db90164ac5ed86f2b6aed7e0febac5b3c0c03e";

    public static FrozenDictionary<string, string[]> Inputs { get; } =
        new Dictionary<string, string[]>(StringComparer.Ordinal)
        {
            [Checkout] =
            [
                "repository",
                "ref",
                "token",
                "ssh-key",
                "ssh-known-hosts",
                "ssh-strict",
                "ssh-user",
                "persist-credentials",
                "path",
                "clean",
                "filter",
                "sparse-checkout",
                "sparse-checkout-cone-mode",
                "fetch-depth",
                "fetch-tags",
                "show-progress",
                "lfs",
                "submodules",
                "set-safe-directory",
                "github-server-url",
            ],
            [SetupDotnet] =
            [
                "dotnet-version",
                "dotnet-quality",
                "global-json-file",
                "source-url",
                "owner",
                "config-file",
                "cache",
                "cache-dependency-path",
            ],
            [UploadArtifact] =
            [
                "name",
                "path",
                "if-no-files-found",
                "retention-days",
                "compression-level",
                "overwrite",
                "include-hidden-files",
            ],
            [DownloadArtifact] = ["name", "artifact-ids", "path", "pattern", "merge-multiple", "github-token", "repository", "run-id"],
            [AttestProvenance] =
            [
                "subject-path",
                "subject-digest",
                "subject-name",
                "subject-checksums",
                "push-to-registry",
                "show-summary",
                "github-token",
            ],
            [AttestMaterials] =
            [
                "subject-path",
                "subject-digest",
                "subject-name",
                "subject-checksums",
                "sbom-path",
                "push-to-registry",
                "show-summary",
                "github-token",
            ],
            [UploadPages] = ["name", "path", "retention-days"],
            [DeployPages] = ["token", "timeout", "error_count", "reporting_interval", "artifact_name", "preview"],
        }.ToFrozenDictionary(StringComparer.Ordinal);
}
