package main

import (
	"fmt"
	"strings"

	"contralay/calc/formula/plan"
	"contralay/ui/bench"
	"contralay/ui/guide"
)

// textWidth is what printed pages are broken to.
const textWidth = 76

// usageText is the page of commands.
func usageText() string {
	names := topics()
	half := (len(names) + 1) / 2
	first, second := strings.Join(names[:half], ", "), strings.Join(names[half:], ", ")
	return fmt.Sprintf(helpText, plan.AtOnce, first+",\n                               "+second)
}

// topics are what help knows, the key table among them.
func topics() []string { return append(guide.Names(), "keys") }

// help prints the page of commands, or one page of the guide.
func help(args []string, w world) (int, error) {
	switch len(args) {
	case 0:
		return ok, print(w.out, usageText())
	case 1:
	default:
		return usage, misuse{"help takes one topic: " + strings.Join(topics(), ", ")}
	}
	if strings.EqualFold(args[0], "keys") {
		return ok, print(w.out, bench.KeyText(textWidth))
	}
	t, found := guide.Find(args[0])
	if !found {
		if of := ofCommand(strings.ToLower(args[0])); of != "" {
			return ok, print(w.out, of)
		}
		return usage, misuse{fmt.Sprintf("there is no help on %q. The topics are %s", args[0], strings.Join(topics(), ", "))}
	}
	return ok, print(w.out, t.Title+"\n\n"+strings.Join(t.Lines(textWidth), "\n")+"\n")
}

// ofCommand is what the page of commands says of one, "" where it is none.
func ofCommand(name string) string {
	var out []string
	in := false
	for line := range strings.SplitSeq(usageText(), "\n") {
		lead := len(line) - len(strings.TrimLeft(line, " "))
		words := strings.Fields(line)
		switch {
		case lead == 2 && len(words) > 1 && words[0] == "contralay":
			in = words[1] == name
		case lead < 3:
			in = false
		}
		if in {
			out = append(out, strings.TrimPrefix(line, "  "))
		}
	}
	if out == nil {
		return ""
	}
	return strings.Join(out, "\n") + "\n"
}

// commands and flags are what a shell may complete.
func commands() []string {
	return []string{"new", "check", "figures", "compare", "import", "measured", "plan", "run", "sheet", "help", "completion", "version"}
}

func flags() []string {
	return []string{"--accept", "--ascii", "--bounce", "--catalogue", "--centre", "--centres", "--colour", "--effort", "--full", "--help",
		"--into", "--json",
		"--keep-odd", "--lay-ratio", "--layers", "--light", "--on", "--out", "--recipe", "--serial", "--sheet", "--spares", "--spec",
		"--unit",
		"--without"}
}

// completion prints a script for a shell: commands, topics, the words a flag takes,
// and files elsewhere.
func completion(shell string, w world) (int, error) {
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
    --bounce|--spares|--centre|--layers|--effort|--lay-ratio|--on|--serial|--accept|--without|--sheet|--spec) return ;;
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
`, words(topics()), words(flags()), words(commands()))
	case "zsh":
		text = fmt.Sprintf(`#compdef contralay
# contralay for zsh: source <(contralay completion zsh)
_contralay() {
  case ${words[CURRENT-1]} in
    help) compadd %s; return ;;
    completion) compadd bash zsh fish; return ;;
    --colour) compadd auto always never; return ;;
    --centres) compadd equal unequal built; return ;;
    --bounce|--spares|--centre|--layers|--effort|--lay-ratio|--on|--serial|--accept|--without|--sheet|--spec) return ;;
  esac
  if [[ ${words[CURRENT]} == -* ]]; then
    compadd -- %s
    return
  fi
  (( CURRENT == 2 )) && compadd %s
  _files
}
compdef _contralay contralay
`, words(topics()), words(flags()), words(commands()))
	case "fish":
		var b strings.Builder
		b.WriteString("# contralay for fish: contralay completion fish | source\n")
		fmt.Fprintf(&b, "complete -c contralay -n __fish_use_subcommand -a '%s'\n", words(commands()))
		fmt.Fprintf(&b, "complete -c contralay -f -n '__fish_seen_subcommand_from help' -a '%s'\n", words(topics()))
		b.WriteString("complete -c contralay -f -n '__fish_seen_subcommand_from completion' -a 'bash zsh fish'\n")
		takes := map[string]string{"--colour": "auto always never", "--centres": "equal unequal built", "--bounce": "", "--spares": "",
			"--lay-ratio": "", "--centre": "", "--layers": "", "--effort": ""}
		for _, f := range flags() {
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
	default:
		return usage, misuse{fmt.Sprintf("completions are for bash, zsh and fish, not %q", shell)}
	}
	return ok, print(w.out, text)
}
