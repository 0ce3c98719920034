using Ohmstead;
using Ohmstead.Commands;

using var terminal = Terminal.OfProcess();
using var interruption = Interruption.OfProcess();
return CommandLine.Run(args, terminal, interruption);
