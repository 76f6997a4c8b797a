package draw

import (
	"strings"

	"github.com/charmbracelet/x/ansi"
)

// coreMax is the most characters a core has.
const coreMax = 3

// fillerCore is what a filler shows, whatever its label.
const fillerCore = "o"

// cores returns what the map shows for each disc, one to coreMax characters of
// one cell each, and lists those that had to be cut.
//
// A label that is too long keeps its last characters, since ids of a harness
// differ at the end; where that is what another disc already shows, its first
// ones, then the first and the last two, then the first two and the last. Where
// all are taken the last characters stay, and two discs look alike.
func cores(discs []Disc) ([]string, []Short) {
	out := make([]string, len(discs))
	taken := make(map[string]bool, len(discs))
	for i, d := range discs {
		out[i] = label(d)
		if len([]rune(out[i])) <= coreMax {
			taken[out[i]] = true
		}
	}
	var short []Short
	for i, d := range discs {
		r := []rune(out[i])
		n := len(r)
		if n <= coreMax {
			continue
		}
		tries := [...]string{
			string(r[n-3:]),
			string(r[:3]),
			string(r[:1]) + string(r[n-2:]),
			string(r[:2]) + string(r[n-1:]),
		}
		pick := tries[0]
		for _, t := range tries {
			if !taken[t] {
				pick = t
				break
			}
		}
		taken[pick] = true
		out[i] = pick
		short = append(short, Short{d.ID, pick})
	}
	return out, short
}

// label is the whole label of a disc, in plain characters.
func label(d Disc) string {
	if d.Kind == Filler {
		return fillerCore
	}
	for _, s := range [2]string{d.Label, d.ID} {
		if t := strings.ReplaceAll(cellular(s, true), " ", ""); t != "" {
			return t
		}
	}
	return "?"
}

// Cellular is text in which each rune fills one cell; in ASCII it has plain characters alone.
func Cellular(s string, ascii bool) string { return cellular(s, ascii) }

// cellular returns text in which each rune fills one cell: runes without width
// are dropped, wide ones and, in ASCII, those beyond 0x7E become "?".
func cellular(s string, ascii bool) string {
	plain := true
	for i := 0; i < len(s); i++ {
		plain = plain && s[i] >= ' ' && s[i] <= '~'
	}
	if plain {
		return s
	}
	return strings.Map(func(r rune) rune {
		w := ansi.StringWidth(string(r))
		switch {
		case r < ' ' || w == 0:
			return -1
		case w != 1 || ascii && r > '~' || r == '\uFFFD':
			return '?'
		}
		return r
	}, s)
}

// prefix is the mark before a core that does not depend on the cursor.
func (d Disc) prefix() string {
	switch {
	case d.Flagged && d.Tracer:
		return "!*"
	case d.Flagged:
		return "!"
	case d.Tracer:
		return "*"
	}
	return ""
}
