package main

import (
	"fmt"
	"strings"

	"contralay/ui/bench"
	"contralay/ui/guide"
	"contralay/ui/guide/manual"
	"contralay/ui/paper/origin"
)

// textWidth is what printed pages are broken to.
const textWidth = 76

// help prints the page of commands, or one page of the guide.
func help(args []string, w world) (int, error) {
	switch len(args) {
	case 0:
		return ok, print(w.out, manual.Usage())
	case 1:
	default:
		return usage, misuse{"help takes one topic: " + strings.Join(manual.Topics(), ", ")}
	}
	if strings.EqualFold(args[0], "keys") {
		return ok, print(w.out, bench.KeyText(textWidth))
	}
	t, found := guide.Find(args[0])
	if !found {
		if c, is := manual.Find(strings.ToLower(args[0])); is {
			return ok, print(w.out, c.Usage())
		}
		return usage, misuse{fmt.Sprintf("there is no help on %q. The topics are %s", args[0], strings.Join(manual.Topics(), ", "))}
	}
	return ok, print(w.out, t.Title+"\n\n"+strings.Join(t.Lines(textWidth), "\n")+"\n")
}

// completion prints a script for a shell.
func completion(shell string, w world) (int, error) {
	text := manual.Completion(shell)
	if text == "" {
		return usage, misuse{fmt.Sprintf("completions are for bash, zsh and fish, not %q", shell)}
	}
	return ok, print(w.out, text)
}

// man prints the manual page.
func man(args []string, w world) (int, error) {
	if len(args) > 0 {
		return usage, misuse{"man takes nothing: contralay man | man -l - reads it"}
	}
	return ok, print(w.out, manual.Page(origin.Release, bench.KeyText(textWidth)))
}
