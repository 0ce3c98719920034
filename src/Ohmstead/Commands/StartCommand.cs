using System.CommandLine;
using Ohmstead.Running;

namespace Ohmstead.Commands;

/// <summary>Starts what a person would otherwise type: a collection, a board, a design, a parts list.</summary>
internal sealed class StartCommand(Terminal terminal)
{
    public Command Build() =>
        new(
            "start",
            """
            Start a collection, a board, a design or a parts list, or write the schemas: nobody types what is known already.

            Examples:
              ohmstead start collection lighthouse --name "Fog signal electronics of the old light"
              ohmstead start board SP-0021 --design bench-supply
              ohmstead start design pulse-shaper --from SP-0019
              ohmstead start schemas ~/.ohmstead/schemas
              ohmstead start parts records/lists/output.csv --board SP-0019 --kind "C=polyester film" --unit C=uF --trial
            """
        )
        {
            new StartCollectionCommand(terminal).Build(),
            new StartBoardCommand(terminal).Build(),
            new StartDesignCommand(terminal).Build(),
            new StartPartsCommand(terminal).Build(),
            new StartSchemasCommand(terminal).Build(),
        };
}
