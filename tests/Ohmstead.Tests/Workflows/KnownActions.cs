using System.Collections.Frozen;

namespace Ohmstead.Tests.Workflows;

/// <summary>The actions our workflows use, pinned as they are used, each with the inputs that its documentation (action.yml) names.</summary>
internal static class KnownActions
{
    public const string Checkout = "actions/checkout@v4";
    public const string SetupDotnet = "actions/setup-dotnet@v4";
    public const string UploadArtifact = "actions/upload-artifact@v4";
    public const string UploadPages = "actions/upload-pages-artifact@v3";
    public const string DeployPages = "actions/deploy-pages@v4";

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
            [UploadPages] = ["name", "path", "retention-days"],
            [DeployPages] = ["token", "timeout", "error_count", "reporting_interval", "artifact_name", "preview"],
        }.ToFrozenDictionary(StringComparer.Ordinal);
}
