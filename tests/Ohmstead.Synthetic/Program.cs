using System.Globalization;
using Ohmstead.Synthetic;
using Ohmstead.Synthetic.Files;

var boards = 0;
var seed = 1UL;
string? folder = null;
var isUnderstood = args.Length % 2 == 0;
for (var at = 0; isUnderstood && at < args.Length; at += 2)
{
    var value = args[at + 1];
    isUnderstood = args[at] switch
    {
        "--boards" => int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out boards) && boards is > 0 and < 100_000,
        "--seed" => ulong.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out seed),
        "--to" => (folder = value).Length > 0,
        _ => false,
    };
}

if (!isUnderstood || boards == 0 || folder is null)
{
    Console.Error.WriteLine("expected --boards NUMBER (1 to 99999) --to FOLDER, and if wanted --seed NUMBER");
    return 2;
}

if (Directory.Exists(folder) && Directory.EnumerateFileSystemEntries(folder).Any())
{
    Console.Error.WriteLine($"{folder} is not empty, an empty or new folder is expected");
    return 2;
}

var bytes = SyntheticCollection.Write(new CollectionPlan(boards, seed), folder);
Console.WriteLine(
    string.Create(CultureInfo.InvariantCulture, $"{boards} boards, {bytes / 1024.0 / boards:0.0} KiB a board with everything, in {folder}")
);
return 0;
