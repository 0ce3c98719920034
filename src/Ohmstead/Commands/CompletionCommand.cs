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
                local word shown typed="${COMP_WORDS[COMP_CWORD]}" before="${COMP_WORDS[COMP_CWORD - 1]}"
                COMPREPLY=()
                while IFS= read -r word; do
                    # Here a word ends at the sign: --sort=title is three.
                    [[ $typed == "=" || $before == "=" ]] && word="${word#*=}"
                    case "$typed" in
                        [\"\']*) shown="$word" ;;
                        *) printf -v shown '%q' "$word" ;;
                    esac
                    # The home folder stays what it is, and the sign behind a name.
                    [[ $word == "~"* ]] && shown="~${shown#\\~}"
                    COMPREPLY+=("$shown")
                done < <(ohmstead "[suggest:${COMP_POINT}]" "${COMP_LINE}" 2>/dev/null)
                [[ ${#COMPREPLY[@]} -eq 1 && ${COMPREPLY[0]} == *[/=] ]] && compopt -o nospace 2>/dev/null
                return 0
            }
            complete -o nosort -F _ohmstead ohmstead

            """
        ),
        (
            "zsh",
            """
            #compdef ohmstead
            _ohmstead() {
                local word line="${(j: :)words[1,CURRENT-1]} ${(q)${(Q)PREFIX}}"
                local -a whole begun
                for word in "${(@f)$(ohmstead "[suggest:${#line}]" "$line ${(j: :)words[CURRENT+1,-1]}" 2>/dev/null)}"; do
                    case $word in
                        '') ;;
                        *[/=]) begun+=("$word") ;;
                        *) whole+=("$word") ;;
                    esac
                done
                compadd -S '' -a begun
                compadd -a whole
            }
            compdef _ohmstead ohmstead

            """
        ),
        (
            "fish",
            """
            function __ohmstead_words
                set -l typed (commandline --cut-at-cursor --current-process | string join ' ' | string trim --left)
                set -l line (commandline --current-process | string join ' ' | string trim --left)
                ohmstead "[suggest:"(string length -- "$typed")"]" "$line" 2>/dev/null
            end
            complete --command ohmstead --no-files --arguments '(__ohmstead_words)'

            """
        ),
        (
            "powershell",
            """
            Register-ArgumentCompleter -Native -CommandName ohmstead -ScriptBlock {
                param($word, $line, $position)
                $at = $position - $line.Extent.StartOffset
                $found = @(ohmstead "[suggest:$at]" ("$line".PadRight($at)) 2>$null | ForEach-Object {
                    $text = if ($_ -match '[\s;,]') { "'$($_ -replace "'", "''")'" } else { $_ }
                    [System.Management.Automation.CompletionResult]::new($text, $_, 'ParameterValue', $_)
                })
                # An empty word keeps the shell from offering files where none is meant.
                if ($found.Count -gt 0) { $found } else { '' }
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
            Print what a shell needs to complete words by their place: commands, boards, parts, lots, words of lists, files.

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
