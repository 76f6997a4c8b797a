package which

import (
	"fmt"
	"strings"

	"contralay/calc/query/inserts"
	"contralay/ui/draw"
)

// textWidth is what the text is broken to.
const textWidth = 80

// firstOnes is how many arrangements are listed where not all are asked for.
const firstOnes = 10

// Text is the answer as plain lines; all lists every arrangement that takes it.
func Text(a inserts.Answer, all bool) string {
	var b strings.Builder
	cavities := 0
	for _, k := range a.Kinds {
		cavities += k.Count
	}
	put := func(indent, text string) {
		for n, line := range wrapped(text, textWidth-len(indent)-2) {
			if n > 0 {
				line = "  " + line
			}
			b.WriteString(indent + line + "\n")
		}
	}
	put("", fmt.Sprintf("What must go in: %s. That is %d.", Kinds(a.Kinds), cavities))
	for _, says := range Said(a) {
		put("", says)
	}
	fits := a.Fits
	if !all && len(fits) > firstOnes {
		fits = fits[:firstOnes]
	}
	memory := false
	if len(fits) > 0 {
		fmt.Fprintf(&b, "\n%-14s %5s %5s  %-28s %s\n", "arrangement", "shell", "free", "left by contact size", "next larger shell")
	}
	for _, f := range fits {
		shell := "-"
		if f.Insert.Shell > 0 {
			shell = fmt.Sprint(f.Insert.Shell)
		}
		line := fmt.Sprintf("%-14s %5s %5d  %-28s %s", Names(f.Insert), shell, f.Free, Left(f), Larger(f))
		b.WriteString(strings.TrimRight(line, " ") + "\n")
		if len(f.Left) > 1 {
			put("  ", Goes(f))
		}
		for _, says := range Seals(f) {
			memory = memory || strings.Contains(says, Memory)
			put("  ? ", says)
		}
		if _, says := f.Insert.Qualified(); says != "" {
			put("  ", strings.ToUpper(says[:1])+says[1:])
		}
	}
	if n := len(a.Fits) - len(fits); n > 0 {
		fmt.Fprintf(&b, "and %d more: --full lists all\n", n)
	}
	if len(fits) > 0 {
		b.WriteString("\n")
	}
	for _, says := range []string{Unseen(fits), NotJudged(a)} {
		put("", says)
	}
	if memory {
		put("", FromMemory)
	}
	return b.String()
}

// wrapped breaks a text at its blanks into lines of at most w cells.
func wrapped(text string, w int) []string {
	var out []string
	line := ""
	for _, word := range strings.Fields(text) {
		if line != "" && draw.Width(line)+1+draw.Width(word) > w {
			out, line = append(out, line), ""
		}
		if line != "" {
			line += " "
		}
		line += word
	}
	if line != "" {
		out = append(out, line)
	}
	return out
}
