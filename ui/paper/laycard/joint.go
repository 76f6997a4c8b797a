package laycard

import (
	"fmt"
	"html"
	"html/template"
	"slices"
	"strings"

	"contralay/model/unit"
	"contralay/ui/paper/laycard/section"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
)

// Joint is a splice as whoever makes it needs it: which wires come in, which go on, where its sleeve
// lies.
type Joint struct {
	ID          string
	One, More   []JointWire // in its two barrels; the barrel with fewer wires first
	Part        string      // "-" where none is known
	Sleeve      string      // length and diameter of it; "" where they are not known
	At, Along   string      // breakout, and branch along which it is shifted; "" where it lies at the centre
	From        string      // how far its middle is from the centre of At, with its unit; "" for 0
	Also        string      // the same from the other end of the branch; "" where it is not measured
	Beyond      bool        // At lies beyond it, seen along the wires that come in
	Is, Becomes string      // in words: "230", "231, 232, 233 and 234"
}

// JointWire is one wire of it.
type JointWire struct{ ID, Colour, Size, End string }

// JointOf is one splice of the harness.
func JointOf(m list.Maker, i int) Joint {
	sp, c := &m.H.Splices[i], &m.S.Splices[i]
	j := Joint{ID: sp.ID, Part: list.Dash(c.Part), At: sp.At}
	one, more := c.Near, c.Far
	if len(more) < len(one) {
		one, more = more, one
	}
	if c.Part != "" {
		j.Part += list.Mem(c.Standing)
	}
	if e, ok := m.S.Cat.Splices[c.Part]; ok && e.LengthMM > 0 {
		j.Sleeve = fmt.Sprintf("sleeve %s %s long", m.Sys.Length(e.LengthMM), m.Sys.Name())
		if e.OverMM > 0 {
			j.Sleeve += ", OD " + m.Sys.Diameter(e.OverMM)
		}
		j.Sleeve += list.Mem(e.Standing)
	}
	for n, all := range [2][]int{one, more} {
		for _, k := range all {
			w := &m.H.Wires[k]
			end := m.End(w, true)
			if w.From.V == sp.ID {
				end = m.End(w, false)
			}
			wire := JointWire{w.ID, colourOf(w), list.Size(w), end}
			if n == 0 {
				j.One = append(j.One, wire)
			} else {
				j.More = append(j.More, wire)
			}
		}
	}
	if sp.Toward.V != "" && sp.OffsetMM.V > 0 {
		j.Along, j.From = sp.Toward.V, m.Sys.Length(sp.OffsetMM.V)+" "+m.Sys.Name()
		if b, station, ok := stationFromMM(m.S, i); ok {
			j.Beyond = len(one) > 0 && slices.Contains(m.S.Wires[one[0]].Path, b)
			mb := &m.H.Branches[b]
			other, far := mb.From, station
			if mb.From == sp.At {
				other, far = mb.To, mb.LengthMM-station
			}
			j.Also = fmt.Sprintf("%s %s from %s", m.Sys.Length(far), m.Sys.Name(), other)
		}
	}
	j.Is, j.Becomes = idsOf(j.One), idsOf(j.More)
	return j
}

// idsOf is wires by their ids, in words.
func idsOf(all []JointWire) string {
	var ids []string
	for _, w := range all {
		ids = append(ids, w.ID)
	}
	if n := len(ids); n > 1 {
		return strings.Join(ids[:n-1], ", ") + " and " + ids[n-1]
	}
	return strings.Join(ids, "")
}

// Says is the splice in a sentence.
func (j Joint) Says() string {
	switch {
	case len(j.One) == 0 || len(j.More) == 0:
		return fmt.Sprintf("%s joins %s", j.ID, wordOr(j.Becomes, j.Is))
	case len(j.One) == 1 && len(j.More) == 1:
		return fmt.Sprintf("%s: wire %s becomes wire %s", j.ID, j.Is, j.Becomes)
	case len(j.One) == 1:
		return fmt.Sprintf("%s: wire %s becomes %d wires", j.ID, j.Is, len(j.More))
	}
	return fmt.Sprintf("%s: wires %s become wires %s", j.ID, j.Is, j.Becomes)
}

// Lies is where the middle of its sleeve lies.
func (j Joint) Lies() string {
	if j.From == "" {
		return "at the centre of " + j.At
	}
	says := fmt.Sprintf("middle of the sleeve %s from the centre of %s, in %s", j.From, j.At, j.Along)
	if j.Also != "" {
		says += ", " + j.Also
	}
	return says
}

// Measures of the picture of a splice, mm.
const (
	jointLine   = 4.2 // distance of two wires
	jointSleeve = 17.0
)

// jointHigh is how high the picture of a splice is.
func jointHigh(j Joint) unit.Millimetre {
	high := float64(max(len(j.One), len(j.More), 1))*jointLine + 2
	if j.From != "" {
		high += 9
	}
	return unit.Millimetre(max(high, 8))
}

// picture draws a splice in a width: the wires that come in at the left, the sleeve, the wires that go
// on at the right, each with its colour and its end, and how far the sleeve lies from the breakout.
// It is not to scale.
func (j Joint) picture(wide unit.Millimetre) (template.HTML, unit.Millimetre) {
	w, high := float64(wide), jointHigh(j)
	rows := float64(max(len(j.One), len(j.More), 1))
	mid, size := 1+rows*jointLine/2, float64(page.Small.Size())
	x := w * 0.36
	var b strings.Builder
	fmt.Fprintf(&b, `<svg xmlns="http://www.w3.org/2000/svg" class="joint" width="%[1]smm" height="%[2]smm" viewBox="0 0 %[1]s %[2]s" `+
		`role="img" aria-label="%[3]s" font-family="%[4]s" font-size="%[5]s" fill="#000">`, num(w), num(float64(high)),
		html.EscapeString(j.Says()), html.EscapeString(section.Family), num(size))
	wire := func(x0, x1, y0, y1 float64) {
		fmt.Fprintf(&b, `<path d="M%s %sC%s %s %s %s %s %s" fill="none" stroke="#000" stroke-width=".5"/>`, num(x0), num(y0), num((x0+x1)/2),
			num(y0), num((x0+x1)/2), num(y1), num(x1), num(y1))
	}
	text := func(says string, x, y float64, anchor string, bold bool, room float64) {
		l, weight := page.Small, ""
		if bold {
			l, weight = page.Strong, ` font-weight="bold"`
		}
		fmt.Fprintf(&b, `<text x="%s" y="%s" text-anchor="%s"%s>%s</text>`, num(x), num(y+size*.36), anchor, weight,
			html.EscapeString(l.Short(says, unit.Millimetre(room))))
	}
	at := func(k, n int) float64 { return mid + (float64(k)-float64(n-1)/2)*jointLine }
	const lead = 7
	for k, one := range j.One {
		y := at(k, len(j.One))
		wire(x-lead, x, y, mid)
		id := float64(page.Strong.Wide(one.ID)) + 1.5
		text(one.ID, x-lead-1, y, "end", true, x-lead-1)
		text(one.End+"  "+one.Colour, x-lead-1-id, y, "end", false, x-lead-1-id)
	}
	right := x + jointSleeve
	for k, more := range j.More {
		y := at(k, len(j.More))
		wire(right, right+lead, mid, y)
		id := float64(page.Strong.Wide(more.ID)) + 1.5
		text(more.ID, right+lead+1, y, "start", true, w)
		text(more.Colour+"  "+more.Size+"  to "+more.End, right+lead+1+id, y, "start", false, w-right-lead-1-id)
	}
	fmt.Fprintf(&b, `<rect x="%s" y="%s" width="%s" height="5" rx="1.2" fill="#fff" stroke="#000" stroke-width=".7"/>`, num(x), num(mid-2.5),
		num(jointSleeve))
	text(j.ID, x+jointSleeve/2, mid, "middle", true, jointSleeve)
	if j.From != "" {
		j.dimension(&b, x+jointSleeve/2, mid, rows, w)
	}
	b.WriteString("</svg>")
	return template.HTML(b.String()), high // #nosec: it escapes what it writes
}

// dimension draws how far the middle of the sleeve is from the breakout, which lies beyond it or
// before it.
func (j Joint) dimension(b *strings.Builder, x, mid, rows, wide float64) {
	y, end := mid+rows*jointLine/2+3.4, wide-14
	anchor := "start"
	tx := end + 1
	if !j.Beyond {
		end, anchor = 14, "end"
		tx = end - 1
	}
	size := float64(page.Small.Size())
	s := 2.0
	if end < x {
		s = -2
	}
	fmt.Fprintf(b, `<path class="dimension" d="M%[1]s %[5]sV%[3]sM%[2]s %[4]sV%[3]sM%[1]s %[6]sH%[2]sm%[7]s -.8l%[8]s .8l%[7]s .8M%[1]s %[6]sm%[8]s `+
		`-.8l%[7]s .8l%[8]s .8" fill="none" stroke="#000" stroke-width=".25"/>`, num(x), num(end), num(y+1), num(y-1.5), num(mid+2.5), num(y),
		num(-s), num(s))
	fmt.Fprintf(b, `<text x="%s" y="%s" text-anchor="middle" font-weight="bold">%s</text>`, num((x+end)/2), num(y+size+.4),
		html.EscapeString(j.From))
	fmt.Fprintf(b, `<text x="%s" y="%s" text-anchor="%s" font-weight="bold">%s</text>`, num(tx), num(y+size*.36), anchor,
		html.EscapeString(j.At))
}
