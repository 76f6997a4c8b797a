package manual

import (
	"fmt"
	"slices"
	"strings"
)

// Completion is a script for a shell, "bash", "zsh" or "fish": commands, topics, flags, the words that a flag takes, and
// files elsewhere. It is "" for another shell.
func Completion(shell string) string {
	switch shell {
	case "bash":
		return bash()
	case "zsh":
		return zsh()
	case "fish":
		return fish()
	}
	return ""
}

// taking are the flags that take one of some words, and the names of those that take something that is no file.
func taking() (worded []Flag, other []string) {
	for _, f := range EveryFlag() {
		switch {
		case len(f.Words) > 0:
			worded = append(worded, f)
		case f.Value != "" && f.Value != "FILE":
			other = append(other, f.Name)
		}
	}
	return worded, other
}

// flagNames are the names of all flags.
func flagNames() string {
	var all []string
	for _, f := range EveryFlag() {
		all = append(all, f.Name)
	}
	return strings.Join(all, " ")
}

func bash() string {
	var b strings.Builder
	b.WriteString(`# contralay for bash: source <(contralay completion bash)
_contralay() {
  local cur=${COMP_WORDS[COMP_CWORD]} prev=${COMP_WORDS[COMP_CWORD-1]}
  case $prev in
`)
	offer := func(before string, all []string) {
		fmt.Fprintf(&b, "    %s) COMPREPLY=($(compgen -W \"%s\" -- \"$cur\")); return ;;\n", before, strings.Join(all, " "))
	}
	offer("help", Topics())
	offer("completion", shells)
	worded, other := taking()
	for _, f := range worded {
		offer(f.Name, f.Words)
	}
	fmt.Fprintf(&b, "    %s) return ;;\n  esac\n  case $cur in\n", strings.Join(other, "|"))
	fmt.Fprintf(&b, "    -*) COMPREPLY=($(compgen -W \"%s\" -- \"$cur\")); return ;;\n  esac\n", flagNames())
	fmt.Fprintf(&b, `  COMPREPLY=($(compgen -f -- "$cur"))
  if [ "$COMP_CWORD" -eq 1 ]; then
    COMPREPLY+=($(compgen -W "%s" -- "$cur"))
  fi
}
complete -o filenames -F _contralay contralay
`, strings.Join(Names(), " "))
	return b.String()
}

func zsh() string {
	var b strings.Builder
	b.WriteString(`#compdef contralay
# contralay for zsh: source <(contralay completion zsh)
_contralay() {
  case ${words[CURRENT-1]} in
`)
	offer := func(before string, all []string) {
		fmt.Fprintf(&b, "    %s) compadd %s; return ;;\n", before, strings.Join(all, " "))
	}
	offer("help", Topics())
	offer("completion", shells)
	worded, other := taking()
	for _, f := range worded {
		offer(f.Name, f.Words)
	}
	fmt.Fprintf(&b, "    %s) return ;;\n  esac\n", strings.Join(other, "|"))
	fmt.Fprintf(&b, `  if [[ ${words[CURRENT]} == -* ]]; then
    compadd -- %s
    return
  fi
  (( CURRENT == 2 )) && compadd %s
  _files
}
compdef _contralay contralay
`, flagNames(), strings.Join(Names(), " "))
	return b.String()
}

func fish() string {
	var b strings.Builder
	b.WriteString("# contralay for fish: contralay completion fish | source\n")
	fmt.Fprintf(&b, "complete -c contralay -n __fish_use_subcommand -a '%s'\n", strings.Join(Names(), " "))
	fmt.Fprintf(&b, "complete -c contralay -f -n '__fish_seen_subcommand_from help' -a '%s'\n", strings.Join(Topics(), " "))
	fmt.Fprintf(&b, "complete -c contralay -f -n '__fish_seen_subcommand_from completion' -a '%s'\n", strings.Join(shells, " "))
	_, other := taking()
	for _, f := range EveryFlag() {
		name := strings.TrimPrefix(f.Name, "--")
		switch {
		case len(f.Words) > 0:
			fmt.Fprintf(&b, "complete -c contralay -l %s -x -a '%s'\n", name, strings.Join(f.Words, " "))
		case slices.Contains(other, f.Name):
			fmt.Fprintf(&b, "complete -c contralay -l %s -x\n", name)
		case f.Value != "":
			fmt.Fprintf(&b, "complete -c contralay -l %s -r\n", name)
		default:
			fmt.Fprintf(&b, "complete -c contralay -l %s\n", name)
		}
	}
	return b.String()
}
