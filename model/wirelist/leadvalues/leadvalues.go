// Package leadvalues writes the colour and the size of a wire behind its ends in points that say them first, so that they are no part of
// the near end.
//
//	[x] red 10ga, main breaker T1 -> contactor L1        [x] main breaker T1 -> contactor L1, red 10ga
//
// Lines that are no points package pieces reads.
package leadvalues

import (
	"slices"
	"strings"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/toldcells"
)

// least is how many points say their values first where that is no chance (no source).
const least = 2

// Rows writes such points so; any other row, and all where there are few, are as they were.
func Rows(h shape.Headings, t *table.Table) []table.Row {
	if h.HeadLine() > 0 || h.Numbered() {
		return t.Rows
	}
	var out []table.Row
	n := 0
	for i, r := range t.Rows {
		if len(r.Cells) == 0 || !r.Point && !strings.HasPrefix(r.Cells[0], "[") && step(r.Cells[0]) == "" {
			continue
		}
		text, ok := behind(toldcells.Text(r.Cells))
		if !ok {
			continue
		}
		if out == nil {
			out = slices.Clone(t.Rows)
		}
		out[i].Cells, out[i].Drawn = []string{text}, nil
		n++
	}
	if n < least {
		return t.Rows
	}
	return out
}

// behind writes the values behind the ends of one text.
func behind(text string) (out string, ok bool) {
	box := step(text)
	steps := box != ""
	text = text[len(box):]
	if len(text) > 4 && text[0] == '[' && text[2] == ']' {
		box, text = box+text[:4], text[4:]
	}
	var values []string
	const most = 2 // pieces: a colour and a size
	for range most {
		at := -1
		for _, sign := range []string{", ", ": ", " - ", " – "} {
			if k := strings.Index(text, sign); k > 0 && (at < 0 || k < at) {
				at = k
			}
		}
		if at < 0 {
			break
		}
		piece := strings.TrimSpace(text[:at])
		if name.IsCavity(piece) || strings.Trim(piece, "0123456789.,- ") == "" {
			return "", false // "1: red, up -> selector 1" begins with a cavity
		}
		if colour, size := point.WireValues(piece); colour == "" && size == "" && !point.IsSize(piece) {
			break
		}
		values = append(values, piece)
		text = strings.TrimSpace(strings.TrimLeft(text[at:], ",:-– "))
	}
	from, to := arrow.In(text)
	if len(values) == 0 || to == 0 || strings.TrimSpace(text[:from]) == "" || strings.TrimSpace(text[to:]) == "" {
		return "", false
	}
	if steps && !toldcells.EndsInCavity(strings.TrimSpace(text[:from])) {
		return "", false // "1. red, up -> selector 1" begins with a cavity
	}
	return box + text + ", " + strings.Join(values, ", "), true
}

// step is the number of a step that a text begins with, "3. " or "3) ", "" where it begins with none.
func step(text string) string {
	bare := strings.TrimLeft(text, "0123456789")
	if n := len(text) - len(bare); n > 0 && n < 3 && len(bare) > 2 && (bare[0] == '.' || bare[0] == ')') && bare[1] == ' ' {
		return text[:n+2]
	}
	return ""
}
