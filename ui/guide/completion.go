package guide

import (
	"fmt"
	"strings"
)

// Completes is what a shell may complete: commands, topics of the help, flags, the words of --by and of --paper.
type Completes struct{ Commands, Topics, Flags, Ways, Papers []string }

// Completion is a script for a shell, "bash", "zsh" or "fish": commands, topics, the words a flag takes, and
// files elsewhere. It is "" for another shell.
func Completion(shell string, c Completes) string {
	words := func(in []string) string { return strings.Join(in, " ") }
	var text string
	switch shell {
	case "bash":
		text = fmt.Sprintf(`# contralay for bash: source <(contralay completion bash)
_contralay() {
  local cur=${COMP_WORDS[COMP_CWORD]} prev=${COMP_WORDS[COMP_CWORD-1]}
  case $prev in
    help) COMPREPLY=($(compgen -W "%s" -- "$cur")); return ;;
    completion) COMPREPLY=($(compgen -W "bash zsh fish" -- "$cur")); return ;;
    --colour) COMPREPLY=($(compgen -W "auto always never" -- "$cur")); return ;;
    --centres) COMPREPLY=($(compgen -W "equal unequal built" -- "$cur")); return ;;
    --by) COMPREPLY=($(compgen -W "%s" -- "$cur")); return ;;
    --paper) COMPREPLY=($(compgen -W "%s" -- "$cur")); return ;;
    --layer|--layers|--centre|--effort|--bounce|--spares|--pairs|--shielded|--lay-ratio|--on|--serial|--accept|\
    --withdraw|--without|--sheet|--spec) return ;;
  esac
  case $cur in
    -*) COMPREPLY=($(compgen -W "%s" -- "$cur")); return ;;
  esac
  COMPREPLY=($(compgen -f -- "$cur"))
  if [ "$COMP_CWORD" -eq 1 ]; then
    COMPREPLY+=($(compgen -W "%s" -- "$cur"))
  fi
}
complete -o filenames -F _contralay contralay
`, words(c.Topics), words(c.Ways), words(c.Papers), words(c.Flags), words(c.Commands))
	case "zsh":
		text = fmt.Sprintf(`#compdef contralay
# contralay for zsh: source <(contralay completion zsh)
_contralay() {
  case ${words[CURRENT-1]} in
    help) compadd %s; return ;;
    completion) compadd bash zsh fish; return ;;
    --colour) compadd auto always never; return ;;
    --centres) compadd equal unequal built; return ;;
    --by) compadd %s; return ;;
    --paper) compadd %s; return ;;
    --layer|--layers|--centre|--effort|--bounce|--spares|--pairs|--shielded|--lay-ratio|--on|--serial|--accept|\
    --withdraw|--without|--sheet|--spec) return ;;
  esac
  if [[ ${words[CURRENT]} == -* ]]; then
    compadd -- %s
    return
  fi
  (( CURRENT == 2 )) && compadd %s
  _files
}
compdef _contralay contralay
`, words(c.Topics), words(c.Ways), words(c.Papers), words(c.Flags), words(c.Commands))
	case "fish":
		var b strings.Builder
		b.WriteString("# contralay for fish: contralay completion fish | source\n")
		fmt.Fprintf(&b, "complete -c contralay -n __fish_use_subcommand -a '%s'\n", words(c.Commands))
		fmt.Fprintf(&b, "complete -c contralay -f -n '__fish_seen_subcommand_from help' -a '%s'\n", words(c.Topics))
		b.WriteString("complete -c contralay -f -n '__fish_seen_subcommand_from completion' -a 'bash zsh fish'\n")
		takes := map[string]string{"--colour": "auto always never", "--centres": "equal unequal built", "--bounce": "", "--spares": "",
			"--pairs": "", "--shielded": "", "--lay-ratio": "", "--layer": "", "--layers": "", "--centre": "", "--effort": "",
			"--by": words(c.Ways), "--paper": words(c.Papers)}
		for _, f := range c.Flags {
			name := strings.TrimPrefix(f, "--")
			switch v, is := takes[f]; {
			case f == "--catalogue":
				fmt.Fprintf(&b, "complete -c contralay -l %s -r\n", name)
			case is && v == "":
				fmt.Fprintf(&b, "complete -c contralay -l %s -x\n", name)
			case is:
				fmt.Fprintf(&b, "complete -c contralay -l %s -x -a '%s'\n", name, v)
			default:
				fmt.Fprintf(&b, "complete -c contralay -l %s\n", name)
			}
		}
		text = b.String()
	}
	return text
}
