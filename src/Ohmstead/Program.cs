using Ohmstead;
using Ohmstead.Running;

using var terminal = Terminal.OfProcess();
using var interruption = Interruption.OfProcess();
return CommandLine.Run(args, terminal, interruption);
