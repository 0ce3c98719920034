using System.CommandLine;
using Ohmstead.Running;

namespace Ohmstead.Commands;

/// <summary>Prints what a shell needs to complete the words of this program.</summary>
internal sealed class CompletionCommand(Terminal terminal)
{
    // Each asks the program itself, with the line as it stands: '[suggest:N]' is answered by one word a line.
    private static readonly (string Shell, string Script)[] Scripts =
    [
        (
            "bash",
            """
            _ohmstead() {
                local IFS=$'\n' word
                COMPREPLY=()
                for word in $(ohmstead "[suggest:${COMP_POINT}]" "${COMP_LINE}" 2>/dev/null); do
                    [[ $word == "${COMP_WORDS[COMP_CWORD]}"* ]] && COMPREPLY+=("$(printf '%q' "$word")")
                done
            }
            complete -o nosort -o default -F _ohmstead ohmstead

            """
        ),
        (
            "zsh",
            """
            #compdef ohmstead
            _ohmstead() {
                local -a words_known
                words_known=("${(@f)$(ohmstead "[suggest:${CURSOR}]" "${BUFFER}" 2>/dev/null)}")
                compadd -a words_known
            }
            compdef _ohmstead ohmstead

            """
        ),
        (
            "fish",
            """
            complete --command ohmstead --arguments '(ohmstead "[suggest:"(commandline --cursor)"]" (commandline) 2>/dev/null)'

            """
        ),
        (
            "powershell",
            """
            Register-ArgumentCompleter -Native -CommandName ohmstead -ScriptBlock {
                param($word, $line, $position)
                ohmstead "[suggest:$position]" "$line" 2>$null | ForEach-Object {
                    $text = if ($_ -match '[\s;,]') { "'$($_ -replace "'", "''")'" } else { $_ }
                    [System.Management.Automation.CompletionResult]::new($text, $_, 'ParameterValue', $_)
                }
            }

            """
        ),
    ];

    public Command Build()
    {
        var shell = EntryOptions.OneOf("SHELL", "The shell", [.. Scripts.Select(script => script.Shell)]);
        var command = new Command(
            "completion",
            """
            Print what a shell needs to complete commands, board numbers and part references.

            Examples:
              ohmstead completion bash > ~/.local/share/bash-completion/completions/ohmstead
              ohmstead completion fish > ~/.config/fish/completions/ohmstead.fish
              ohmstead completion zsh  > _ohmstead        in a folder of $fpath
              ohmstead completion powershell >> $PROFILE
            """
        )
        {
            shell,
        };
        command.SetAction(parsed => terminal.Out.Write(Scripts.First(script => script.Shell == parsed.GetValue(shell)).Script));
        return command;
    }
}
