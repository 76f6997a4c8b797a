package strip

import (
	"fmt"
	"strings"

	"contralay/calc/query/cliff"
	"contralay/model/unit"
	"contralay/ui/draw"
	"contralay/ui/paper"
)

// Bar is a length of at most w cells where most fills them all: half a cell is drawn where the
// terminal can. What there is at all takes half a cell at least.
func Bar(v, most unit.Millimetre, w int, ascii bool) string {
	if v <= 0 || most <= 0 || w <= 0 {
		return ""
	}
	halves := max(1, min(2*w, int(float64(2*w)*float64(v/most)+0.5)))
	if ascii {
		return strings.Repeat("#", (halves+1)/2)
	}
	return strings.Repeat("█", halves/2) + strings.Repeat("▌", halves%2)
}

// Most is the largest OD of a strip, which fills a bar.
func Most(s *cliff.Strip) unit.Millimetre {
	most := s.Laid.OverMM
	for n := s.Least; n <= s.Most; n++ {
		p, _ := s.Point(n)
		most = max(most, p.OverMM)
	}
	return most
}

// ShortNote is how wide a short note is at most.
const ShortNote = len("layer + 3/16")

// Note is what begins with a count, in a word or two: "layer, tube 1/2"; short has at most ShortNote
// cells: "layer + 1/2".
func Note(s *cliff.Strip, n int, short bool) string {
	p, ok := s.Point(n)
	b := s.Begins(n)
	tube := "tube " + Size(p)
	if p.Tube.ID == "" {
		tube = "no tube"
	}
	switch {
	case ok && p.Branch == nil:
		return "no lay-up"
	case b.Tube && b.Layer && short:
		if text := "layer + " + Size(p); p.Tube.ID != "" && draw.Width(text) <= ShortNote {
			return text
		}
		return "layer + tube"
	case b.Tube && b.Layer:
		return "layer, " + tube
	case b.Tube && short && draw.Width(tube) > ShortNote:
		return "tube"
	case b.Tube:
		return tube
	case b.Layer:
		return "layer"
	}
	return ""
}

// Size is the sheath of a point as the shelf says it, without its bores; "-" where none holds.
func Size(p cliff.Point) string {
	if p.Tube.ID == "" {
		return "-"
	}
	name, _, _ := strings.Cut(p.Tube.ShelfLabel, " (")
	return name
}

// Lays is the lay-up of a point as a builder says it: "1 · 6 · 12"; "" where there is none.
func Lays(p cliff.Point, ascii bool) string { return paper.Aloud(p.Counts(), ascii) }

// barW is how wide a bar is on a page.
const barW = 30

// Text is a strip as plain text: a line for each count, the present one marked, then the sentences.
func Text(s *cliff.Strip, ascii bool) string {
	var b strings.Builder
	most, wide := Most(s), len("lay-up")
	for n := s.Least; n <= s.Most; n++ {
		p, _ := s.Point(n)
		wide = max(wide, draw.Width(Lays(p, ascii)))
	}
	fmt.Fprintf(&b, "%s%6s %6s  %s\n", draw.Pad("size "+s.Size, barW+6), "OD mm", "sheath", "lay-up")
	for n := s.Least; n <= s.Most; n++ {
		p, ok := s.Point(n)
		if !ok {
			continue
		}
		mark, over := " ", "-"
		if n == s.Now {
			mark = "="
		}
		if p.Branch != nil {
			over = unit.MM.Diameter(p.OverMM)
		}
		line := fmt.Sprintf("%s%3d  %s%6s %6s  %s  %s", mark, n, draw.Pad(Bar(p.OverMM, most, barW, ascii), barW), over, Size(p),
			draw.Pad(Lays(p, ascii), wide), Note(s, n, false))
		b.WriteString(strings.TrimRight(line, " ") + "\n")
	}
	for _, line := range wrapped(strings.Join(s.Says(unit.MM), " ")) {
		b.WriteString(line + "\n")
	}
	return b.String()
}

// textW is what the sentences are broken to.
const textW = 76

// wrapped breaks text at blanks.
func wrapped(text string) []string {
	var out []string
	line := ""
	for _, word := range strings.Fields(text) {
		if line != "" && draw.Width(line)+1+draw.Width(word) > textW {
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
