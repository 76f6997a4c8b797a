package runline

import (
	"slices"
	"strings"

	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// valuesBefore parts a line that says what a wire is before its two ends, of which each is a connector and its cavity in one word:
// "throttle signal 24 AWG green CTRL-10 to THR-2 1500".
func valuesBefore(text string) (from, to string, rest []string) {
	const most = 9 // words of what the wire is (no source)
	w := strings.Fields(text)
	for i := 1; i < min(len(w)-2, most+1); i++ {
		first := endAt(w, i)
		if first.words != 1 || i+2 >= len(w) || parts(w[i+1]) < certain {
			continue
		}
		last := endAt(w, i+2)
		front := w[:i]
		if isFrom(front[i-1]) {
			front = front[:i-1]
		}
		t := tailOf(strings.Join(front, " "))
		if last.words != 1 || t.colour == "" && t.size == "" {
			return "", "", nil
		}
		behind := tailOf(strings.Join(w[i+3:], " "))
		if t.colour == "" {
			t.colour = behind.colour
		} else if behind.colour != "" {
			t.addNote(behind.colour)
		}
		if t.size == "" {
			t.size = behind.size
		} else if behind.size != "" {
			t.addNote(behind.size)
		}
		return first.text, last.text, []string{t.colour, t.size, value.JoinNonEmpty("; ", t.note, behind.signal, behind.note), t.signal}
	}
	return "", "", nil
}

// SayBefore reports whether each of some lines says what its wire is before its two ends.
func SayBefore(lines []string) bool {
	return !slices.ContainsFunc(lines, func(l string) bool { from, _, _ := valuesBefore(l); return from == "" })
}

// Joined makes one text of each row of several cells that say what a wire is and then its two ends, where two or more rows do: they stand
// in columns that no heading names.
func Joined(rows []table.Row) []table.Row {
	var at []int
	for i, r := range rows {
		if n, _ := r.Filled(); n > 2 {
			if from, _, _ := valuesBefore(joined(r)); from != "" {
				at = append(at, i)
			}
		}
	}
	if len(at) < 2 {
		return rows
	}
	out := slices.Clone(rows)
	for _, i := range at {
		out[i].Cells = []string{joined(rows[i])}
	}
	return out
}
