// Package hours is how long work takes, in words: what ticks teach of it, what a shop has accepted, and the
// hours that a harness is expected to take by that.
package hours

import (
	"fmt"
	"math"
	"strings"

	"contralay/calc/formula/learn"
	"contralay/calc/query/record"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/paper"
)

// minutes are minutes of one piece.
func minutes(v float64) string {
	if v < 10 {
		return unit.Fixed(v, 2)
	}
	return unit.Fixed(v, 1)
}

// Lesson is what the steps of one kind of work teach, in lines.
func Lesson(p learn.Pace) []string {
	if p.N == 0 {
		return []string{p.Group + ": no step that counts"}
	}
	many := func(n float64, what string) string {
		if n == 1 {
			return "1 " + what
		}
		return unit.Fixed(n, 0) + " " + what + "s"
	}
	out := []string{fmt.Sprintf("%s: %s a piece, spread %s, from %s in %s", p.Group, minutes(p.Each), minutes(p.Spread),
		many(p.Pieces, "piece"), many(float64(p.N), "step"))}
	switch {
	case p.N < p.Least:
		out = append(out, fmt.Sprintf("  too few steps: %d at least; no hours are expected by it", p.Least))
	case !p.Enough:
		out = append(out, "  all of them were ticked in one minute: no hours are expected by it")
	default:
		out = append(out, "  enough to expect hours by")
	}
	return out
}

// Pauses says which times are in no figure.
func Pauses(n int) string {
	return fmt.Sprintf("pauses left out: %d. A pause is over %d minutes, and over %d minutes a piece", n, record.LongestStep,
		record.PieceMinutes)
}

// Accepted is what a shop accepts of a kind of work; false where there are too few steps.
func Accepted(p learn.Pace, on, from string) (catalogue.Correction, bool) {
	if !p.Enough {
		return catalogue.Correction{}, false
	}
	return catalogue.Correction{Of: p.Group, Each: p.Each, EachSpread: p.Spread, Pieces: int(p.Pieces), Readings: p.N, On: on,
		From: from}, true
}

// InUse is what a shop has accepted of one kind in one line, its history after it.
func InUse(c *catalogue.Catalogue, of string) string {
	if !strings.HasPrefix(of, catalogue.MinutesOf) {
		return paper.InUse(c, of)
	}
	var was []string
	for _, x := range c.Corrections {
		if x.Of == of {
			says := fmt.Sprintf("%s of %d pieces", minutes(x.Each), x.Pieces)
			if x.Withdrawn {
				says = "withdrawn"
			}
			was = append(was, strings.TrimSpace(says+" "+x.On))
		}
	}
	x, ok := c.Correction(of)
	if !ok {
		return of + ": not in use; " + strings.Join(was, ", then ")
	}
	return fmt.Sprintf("%s: %s a piece, spread %s, from %d pieces; accepted: %s", of, minutes(x.Each), minutes(x.EachSpread), x.Pieces,
		strings.Join(was, ", then "))
}

// Line is how long a harness is expected to take, in one line: two spreads either way, which hold 19 of 20 where what is left
// over scatters by chance (from memory).
func Line(h record.Hours) string {
	of := func(m float64) string { return unit.Fixed(m/60, 1) }
	says := fmt.Sprintf("%s hours to expect (%s to %s), by the minutes of this shop", of(h.Minutes),
		of(math.Max(0, h.Minutes-2*h.Spread)), of(h.Minutes+2*h.Spread))
	if len(h.Lacks) > 0 {
		says += "; without " + strings.Join(h.Lacks, ", ")
	}
	return says
}
