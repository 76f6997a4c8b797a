package main

import (
	"fmt"
	"strings"

	"contralay/calc/formula/plan"
	"contralay/ui/bench"
	"contralay/ui/cross/picture"
	"contralay/ui/guide"
	"contralay/ui/paper/tile"
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
	return []string{"new", "check", "figures", "compare", "import", "inserts", "measured", "plan", "run", "sheet", "section",
		"drawing", "help",
		"completion",
		"version"}
}

func flags() []string {
	return []string{"--accept", "--ascii", "--bounce", "--by", "--catalogue", "--centre", "--centres", "--colour", "--effort",
		"--explain", "--full",
		"--help", "--into",
		"--json",
		"--keep-odd", "--lay-ratio", "--layer", "--layers", "--light", "--on", "--out", "--paper", "--pairs", "--recipe",
		"--semicolon", "--serial", "--sheet",
		"--shielded",
		"--spares",
		"--spec", "--unit",
		"--without"}
}

// completion prints a script for a shell.
func completion(shell string, w world) (int, error) {
	text := guide.Completion(shell, guide.Completes{Commands: commands(), Topics: topics(), Flags: flags(), Ways: picture.Ways(),
		Papers: tile.Names()})
	if text == "" {
		return usage, misuse{fmt.Sprintf("completions are for bash, zsh and fish, not %q", shell)}
	}
	return ok, print(w.out, text)
}
