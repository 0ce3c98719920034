# Makes the bill of materials of an archive (CycloneDX 1.6) from the lock file with which its program was published.
#   $lock     the lock file
#   $notices  the text of NOTICES.txt, which has the licence of each library
#   $version, $commit, $machine, $sum  of the archive
# There is no moment and no number made up by chance in it: the same archive has the same bill.

def built: ["Meziantou.Analyzer", "Microsoft.NET.ILLink.Tasks", "Microsoft.DotNet.ILCompiler"];
# The library for pictures has a package for each system, and all of them are locked: one is in the archive.
def elsewhere: {"linux": ["macos", "win32"], "osx": ["linux", "win32"], "win": ["linux", "macos"]}[$machine | split("-")[0]];
def is_inside: . as $name | (built | index($name) | not)
  and ($name | ascii_downcase | . as $small | elsewhere | all(. as $other | $small | startswith("skiasharp.nativeassets.\($other)") | not));
def is_runtime: test("ILCompiler$|^Microsoft\\.NETCore\\.App\\.Runtime\\."; "");
def purl($package): "pkg:nuget/\($package.key)@\($package.value.resolved)";
def terms($name): if $name | is_runtime then "MIT" else
  ($notices | [split("\n")[] | select(startswith("\($name) ")) | split(" | ")[1] | split(" ")[0]] | first
    // error("NOTICES.txt tells no licence of \($name)")) end;

# A package stands there once for all machines, and once more for this one where that has other needs.
[$lock[0].dependencies | to_entries[] | select(.key | endswith("/\($machine)") or (contains("/") | not)) | .value | to_entries[]
  | select(.value.resolved)] | unique_by(.key) | map(select(.key | is_inside)) | sort_by(.key) as $packages
| ($packages | map({key: (.key | ascii_downcase), value: purl(.)}) | from_entries) as $known
| {
    "$schema": "http://cyclonedx.org/schema/bom-1.6.schema.json",
    bomFormat: "CycloneDX",
    specVersion: "1.6",
    version: 1,
    metadata: {
      component: {
        type: "application",
        "bom-ref": "ohmstead",
        name: "ohmstead",
        version: $version,
        hashes: [{alg: "SHA-256", content: $sum}],
        licenses: [{license: {id: "MIT"}}],
        properties: [{name: "ohmstead:archive", value: "ohmstead-\($machine).tar.gz"}, {name: "ohmstead:commit", value: $commit}]
      }
    },
    components: ($packages | map({
      type: (if .key | is_runtime then "framework" else "library" end),
      "bom-ref": purl(.),
      name: .key,
      version: .value.resolved,
      licenses: [{license: {id: terms(.key)}}],
      purl: purl(.),
      # What a restore compares; not the sum of a file, so it is no hash of the component.
      properties: [{name: "nuget:contentHash", value: .value.contentHash}]
    })),
    dependencies: (
      [{ref: "ohmstead", dependsOn: ($packages | map(select(.value.type != "Transitive" or (.key | is_runtime)) | purl(.)))}]
      + ($packages | map({ref: purl(.), dependsOn: [(.value.dependencies // {}) | keys[] | ascii_downcase | $known[.] // empty]}))
    )
  }
