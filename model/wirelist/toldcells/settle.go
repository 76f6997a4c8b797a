package toldcells

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/table"
)

// settle says of the texts that are left which are far ends, names and remarks, by the columns that they stand in.
func (t *Told) settle() {
	ends, all := map[int]int{}, map[int]int{}
	for _, w := range t.Wires {
		for k, x := range w.left {
			if all[x.at]++; IsEnd(x.says) || k > 0 && isPlace(x.says) {
				ends[x.at]++
			}
		}
	}
	good, hued, _ := t.Good()
	bare := 2*hued > good // what has no colour among these says no wire
	for i := range t.Wires {
		w := &t.Wires[i]
		if slices.ContainsFunc(w.left, func(x text) bool { return isCount(x.says) }) {
			t.Counts++
		}
		for _, x := range w.left {
			isEnd := 2*ends[x.at] >= all[x.at] && ends[x.at] > 1
			switch {
			case w.Free && w.Signal == "":
				w.Signal = x.says
			case bare && w.Colour == "" && w.Size == "" && w.To == "":
				w.Note = join(w.Note, x.says) // a word about the cavity, and no name of a wire
			case isEnd && w.Pin == "" && w.From == "":
				w.From = point.WithPole(x.says)
			case isEnd && w.To == "":
				w.To = point.WithPole(x.says)
			case w.Signal == "":
				called, more, _ := strings.Cut(x.says, ", ") // "ground, same stud as the box"
				w.Signal, w.Note = called, join(w.Note, more)
			default:
				w.Note = join(w.Note, x.says)
			}
		}
		w.left = nil
		if strings.HasPrefix(w.Signal, "(") && strings.HasSuffix(w.Signal, ")") {
			w.Signal = strings.Trim(w.Signal, "()")
		}
	}
}

// isPlace reports whether a text behind a name can be the place that a wire goes to: a designator, or a word with its number, "breaker 4".
func isPlace(c string) bool {
	const most = 4 // words (no source)
	w := strings.Fields(c)
	if len(w) == 1 {
		return name.IsDesignator(c) && strings.ToUpper(c) == c
	}
	return len(w) > 1 && len(w) <= most && isCavity(w[len(w)-1]) && !isWith(w)
}

// isCount reports whether a text counts things or measures them: a number and a word that is no unit of a signal.
func isCount(c string) bool {
	w := strings.Fields(strings.Trim(c, "(). "))
	if len(w) != 2 || strings.Trim(w[0], "0123456789.,x") != "" || strings.Trim(w[1], "0123456789.") == "" {
		return false
	}
	switch strings.ToLower(w[1]) {
	case "v", "a", "va", "w", "kw", "ma", "mv", "vdc", "vac", "hz", "khz", "mhz", "bar", "ohm", "kohm", "volt", "amp", "amps", "watt":
		return false
	}
	return true
}

// isWith reports whether some words say with what a wire is twisted or joined, "twisted with E". From memory, no source.
func isWith(w []string) bool {
	for _, s := range w {
		switch table.Fold(s) {
		case "with", "mit", "avec", "con", "com", "met", "med", "same", "as", "see", "wie", "siehe", "comme", "voir":
			return true
		}
	}
	return false
}

func join(a, b string) string {
	if a == "" || b == "" {
		return a + b
	}
	return a + "; " + b
}
