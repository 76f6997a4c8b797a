package ends

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"contralay/calc/query/add"
	"contralay/calc/query/why"
	"contralay/model/catalogue"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
)

// guessRows are the values that nobody typed, what is asked and what is missing first.
func guessRows(m *desk.Model, a add.Added) []desk.Row {
	var out []desk.Row
	for _, kind := range []add.GuessKind{add.Missing, add.Outside, add.Ask, add.Chosen} {
		for n, g := range a.Says {
			if g.Kind == kind {
				out = append(out, guessRow(m, fmt.Sprint("guess ", n), g))
			}
		}
	}
	return out
}

// guessRow is one value with its source.
func guessRow(m *desk.Model, key string, g add.Guess) desk.Row {
	mark := ""
	if g.Kind != add.Chosen {
		mark = "?"
	}
	return desk.Row{Key: key, Mark: mark, Text: m.Sys.Says(g.Says) + standing(g), Detail: m.Sys.Says(g.Says + from(g)),
		WhyOf: func() []desk.Reason { return reasons(g) }}
}

// measured finds the numbers that a value and its source name.
var measured = regexp.MustCompile(`\d+(?:\.\d+)?`)

// reasons are the numbers of a value, each with where it comes from.
func reasons(g add.Guess) []desk.Reason {
	return named(g.Says+from(g), g.Says, catalogue.Origin{Source: strings.Trim(from(g), " ()"), Standing: g.Standing})
}

// named are the numbers that a text of the catalogue names.
func named(text, what string, origin catalogue.Origin) []desk.Reason {
	var out []desk.Reason
	for _, n := range measured.FindAllString(text, -1) {
		v, err := strconv.ParseFloat(n, 64)
		if err != nil {
			continue
		}
		out = append(out, desk.Reason{Made: func() (why.Why, bool) {
			return why.Stated(what, "the kind of device gives it", v, why.Times, origin), true
		}})
	}
	return out
}

// standing is the mark of a value from memory.
func standing(g add.Guess) string { return words.MemMark(g.Standing == catalogue.Memory) }

// standings are the standings as a person reads them.
var standings = map[catalogue.Standing]string{catalogue.House: "measured here", catalogue.Published: "published",
	catalogue.Practice: "common practice", catalogue.Memory: "from memory"}

// from is where a value comes from, in a sentence.
func from(g add.Guess) string {
	var out []string
	if g.Standing != "" {
		out = append(out, "source: "+standings[g.Standing])
	}
	if g.Worked {
		out = append(out, "worked out")
	}
	if g.From != "" {
		out = append(out, g.From)
	}
	for _, s := range g.Source {
		out = append(out, s.String())
	}
	if len(out) == 0 {
		return ""
	}
	return " (" + strings.Join(out, "; ") + ")"
}

// summary is what is made, in a line.
func summary(a add.Added) string {
	var out []string
	put := func(ids []string, one, many string) {
		switch len(ids) {
		case 0:
		case 1:
			out = append(out, one+" "+ids[0])
		default:
			out = append(out, fmt.Sprintf("%d %s %s to %s", len(ids), many, ids[0], ids[len(ids)-1]))
		}
	}
	if len(a.Terminations) > 0 {
		out = append(out, words.Few(a.Terminations))
	}
	put(a.Wires, "wire", "wires")
	put(a.Units, "unit", "units")
	put(a.Splices, "splice", "splices")
	put(a.Branches, "leg", "legs")
	if len(out) == 0 {
		return "nothing is added"
	}
	open := 0
	for k := range a.H.Wires {
		if w := &a.H.Wires[k]; slices.Contains(a.Wires, w.ID) && (w.From.V == "" || w.To.V == "") && w.CappedAt.V == "" {
			open++
		}
	}
	if open > 0 {
		return words.Plural(open, "wire has", "wires have") +
			" one end only: no connector is given, or it has no cavity for them. Added: " + strings.Join(out, ", ")
	}
	return "added: " + strings.Join(out, ", ")
}

// source is the connector that things at a place most likely go to: the one it is itself, else the one with an
// arrangement that has most free cavities; "" where there is none.
func source(m *desk.Model, place string) string {
	if _, is := m.Sheet.Index.Termination[place]; is {
		return place
	}
	best, most := "", 0
	for t := range m.H.Terminations {
		if n := len(m.Sheet.Terms[t].Free); n > most {
			best, most = m.H.Terminations[t].ID, n
		}
	}
	return best
}
