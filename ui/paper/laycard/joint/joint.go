// Package joint is a splice as whoever makes it needs it: its words, and its picture in two sizes.
package joint

import (
	"cmp"
	"fmt"
	"html"
	"html/template"
	"slices"
	"strings"

	"contralay/calc/phase/ends"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/paper/laycard/section"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
)

// Joint is a splice as whoever makes it needs it: which wires come in, which go on, where its sleeve
// lies.
type Joint struct {
	ID          string
	One, More   []Wire // in its two barrels; the barrel with fewer wires first
	Part        string // "-" where none is known
	Sleeve      string // length and diameter of it; "" where they are not known
	At, Along   string // breakout, and branch along which it is shifted; "" where it lies at the centre
	From        string // how far its middle is from the centre of At, with its unit; "" for 0
	Also        string // the same from the other end of the branch; "" where it is not measured
	Beyond      bool   // At lies beyond it, seen along the wires that come in
	Is, Becomes string // in words: "230", "231, 232, 233 and 234"
	Over        string // OD of the bundle with the sleeve on it; "" where it is not known
	Goes        string // where the wires that go on lie up to At, and into what; "" where they are pieces of the branch
}

// Wire is one wire of it.
type Wire struct{ ID, Colour, Size, End string }

// Of is one splice of the harness.
func Of(m list.Maker, i int) Joint {
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
			wire := Wire{w.ID, Colour(w), list.Size(w), end}
			if n == 0 {
				j.One = append(j.One, wire)
			} else {
				j.More = append(j.More, wire)
			}
		}
	}
	if sp.Toward.V != "" && sp.OffsetMM.V > 0 {
		j.Along, j.From = sp.Toward.V, m.Sys.Length(sp.OffsetMM.V)+" "+m.Sys.Name()
		if b, station, ok := stationFrom(m.S, i); ok {
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
	j.Over = overSleeve(m, i)
	if j.Beyond && len(j.One) > 0 && len(j.More) > 0 {
		j.Goes = fmt.Sprintf("%s to %s, in the place of %s: %s", j.ID, j.At, j.Is, intoBranches(m, more))
	}
	return j
}

// overSleeve is the OD of the bundle with the sleeve of a splice on it: what the sleeve is thicker than the thickest of
// its wires stands out, as what is threaded over it has to pass. "" where branch, part or bundle is not known.
func overSleeve(m list.Maker, i int) string {
	b, _, ok := ends.StationOf(m.S, i)
	part, known := m.S.Cat.Splice(m.S.Splices[i].Part)
	if !ok || !known || part.OverMM <= 0 || m.S.Branches[b].OverMM <= 0 || m.H.Splices[i].OffsetMM.V <= 0 {
		return ""
	}
	thickest := unit.Millimetre(0)
	for _, k := range m.S.Splices[i].Wires {
		thickest = max(thickest, m.S.Wires[k].Dia.Nominal)
	}
	return m.Sys.Diameter(m.S.Branches[b].OverMM+max(0, part.OverMM-thickest)) + list.Mem(part.Standing)
}

// intoBranches is the wires that go on from a splice, by the branch that each goes into: "231 232 into R1, 233 into N1".
func intoBranches(m list.Maker, all []int) string {
	var order []string
	ids := map[string][]string{}
	for _, k := range all {
		into := ""
		if path := m.S.Wires[k].Path; len(path) > 0 {
			at := path[0]
			if _, is := m.S.Index.Splice[m.H.Wires[k].To.V]; is {
				at = path[len(path)-1]
			}
			into = " into " + m.H.Branches[at].ID
		}
		if ids[into] == nil {
			order = append(order, into)
		}
		ids[into] = append(ids[into], m.H.Wires[k].ID)
	}
	for k, into := range order {
		order[k] = strings.Join(ids[into], " ") + into
	}
	return strings.Join(order, ", ")
}

// idsOf is wires by their ids, in words.
func idsOf(all []Wire) string {
	var ids []string
	for _, w := range all {
		ids = append(ids, w.ID)
	}
	return andOf(ids)
}

// Says is the splice in a sentence.
func (j Joint) Says() string {
	switch {
	case len(j.One) == 0 || len(j.More) == 0:
		return fmt.Sprintf("%s joins %s", j.ID, cmp.Or(j.Becomes, j.Is))
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
	says := fmt.Sprintf("%s from the centre of %s, in %s", j.From, j.At, j.Along)
	if j.Also != "" {
		says += ", " + j.Also
	}
	return says
}

// lineMM is the distance of two wires of a splice, mm.
const lineMM = 4.2

// highOf is how high the picture of a splice is.
func highOf(j Joint) unit.Millimetre {
	high := float64(max(len(j.One), len(j.More), 2))*lineMM + 2
	if j.From != "" {
		high += 7.5
	}
	return unit.Millimetre(max(high, 8))
}

// Picture draws a splice: the wires that come in at the left, the sleeve, the wires that go on at the
// right, each with its colour, size and end, and how far the sleeve lies from the breakout. It is as
// wide as that needs, and not to scale.
func (j Joint) Picture() (svg template.HTML, wide, high unit.Millimetre) {
	left, right := func(w Wire) string { return w.End + " " + w.Colour }, func(w Wire) string {
		return w.Colour + " " + w.Size + " to " + w.End
	}
	need := func(all []Wire, says func(w Wire) string) float64 {
		most := 0.0
		for _, w := range all {
			most = max(most, float64(page.Strong.Wide(w.ID)+page.Small.Wide(says(w)))+2.6)
		}
		return most
	}
	p := drawn{sleeve: 11, lead: 3.5}
	if len(j.One) == 1 { // there is room above it and below it
		p.above, p.below = j.One[0].Colour, j.One[0].End
		p.x = max(float64(page.Strong.Wide(j.One[0].ID))+1+p.lead, float64(max(page.Small.Wide(p.above), page.Small.Wide(p.below)))-2, 14)
		left = func(Wire) string { return "" }
	} else {
		p.x = max(need(j.One, left), 14) + p.lead
	}
	w := p.x + p.sleeve + p.lead + max(need(j.More, right), 20)
	svg, high = j.draw(&p, w, left, right)
	return svg, unit.Millimetre(w), high
}

// Compact draws the same in a width, with the numbers of the wires alone.
func (j Joint) Compact(wide unit.Millimetre) (template.HTML, unit.Millimetre) {
	none := func(Wire) string { return "" }
	p := drawn{sleeve: 10, lead: 4}
	p.x = (float64(wide) - p.sleeve) / 2
	return j.draw(&p, float64(wide), none, none)
}

func (j Joint) draw(p *drawn, w float64, left, rightOf func(w Wire) string) (template.HTML, unit.Millimetre) {
	high := highOf(j)
	rows := float64(max(len(j.One), len(j.More), 2))
	p.mid = 1 + rows*lineMM/2
	fmt.Fprintf(&p.b, `<svg xmlns="http://www.w3.org/2000/svg" class="joint" width="%[1]smm" height="%[2]smm" viewBox="0 0 %[1]s %[2]s" `+
		`role="img" aria-label="%[3]s" font-family="%[4]s" font-size="%[5]s" fill="#000">`, num(w), num(float64(high)),
		html.EscapeString(j.Says()), html.EscapeString(section.Family), num(smallSize))
	at := func(k, n int) float64 { return p.mid + (float64(k)-float64(n-1)/2)*lineMM }
	for k, one := range j.One {
		y, x := at(k, len(j.One)), p.x-p.lead
		p.wire(x, p.x, y, p.mid)
		p.text(one.ID, x-1, y, "end", true)
		p.text(left(one), x-float64(page.Strong.Wide(one.ID))-2.5, y, "end", false)
	}
	p.text(p.above, 0, p.mid-lineMM*0.95, "start", false)
	p.text(p.below, 0, p.mid+lineMM*0.95, "start", false)
	right := p.x + p.sleeve
	for k, more := range j.More {
		y, x := at(k, len(j.More)), right+p.lead
		p.wire(right, x, p.mid, y)
		p.text(more.ID, x+1, y, "start", true)
		p.text(rightOf(more), x+float64(page.Strong.Wide(more.ID))+2.5, y, "start", false)
	}
	fmt.Fprintf(&p.b, `<rect x="%s" y="%s" width="%s" height="5" rx="1.2" fill="#fff" stroke="#000" stroke-width=".7"/>`, num(p.x),
		num(p.mid-2.5), num(p.sleeve))
	p.text(j.ID, p.x+p.sleeve/2, p.mid, "middle", true)
	if j.From != "" {
		j.dimension(p, rows, w)
	}
	p.b.WriteString("</svg>")
	return template.HTML(p.b.String()), high // #nosec: it escapes what it writes
}

// AlsoSays is where the sleeve lies seen from the other end, short; "" where that is not known.
func (j Joint) AlsoSays() string {
	if j.From == "" {
		return "at the centre of " + j.At
	}
	return j.Also
}

// drawn is the picture of a splice while it is drawn: the height of its middle, where its sleeve
// begins and how long it is, and how long the wires beside it are.
type drawn struct {
	b                    strings.Builder
	mid, x, sleeve, lead float64
	above, below         string // said above and below the one wire that comes in
}

// smallSize is the size of the small letters, mm.
var smallSize = float64(page.Small.Size())

func (p *drawn) wire(x0, x1, y0, y1 float64) {
	fmt.Fprintf(&p.b, `<path d="M%s %sC%s %s %s %s %s %s" fill="none" stroke="#000" stroke-width=".5"/>`, num(x0), num(y0), num((x0+x1)/2),
		num(y0), num((x0+x1)/2), num(y1), num(x1), num(y1))
}

func (p *drawn) text(says string, x, y float64, anchor string, bold bool) {
	if says == "" {
		return
	}
	weight := ""
	if bold {
		weight = ` font-weight="bold"`
	}
	fmt.Fprintf(&p.b, `<text x="%s" y="%s" text-anchor="%s"%s>%s</text>`, num(x), num(y+smallSize*.36), anchor, weight,
		html.EscapeString(says))
}

// dimension draws how far the middle of the sleeve is from the breakout, which lies beyond it or
// before it.
func (j Joint) dimension(p *drawn, rows, wide float64) {
	at := float64(page.Strong.Wide(j.At)) + 1.5
	x, y, end, anchor, s := p.x+p.sleeve/2, p.mid+rows*lineMM/2+2.4, wide-at, "start", 2.0
	label := end + 1
	if !j.Beyond {
		end, anchor, s = at, "end", -2
		label = end - 1
	}
	fmt.Fprintf(&p.b, `<path class="dimension" d="M%[1]s %[5]sV%[3]sM%[2]s %[4]sV%[3]sM%[1]s %[6]sH%[2]sm%[7]s -.8l%[8]s .8l%[7]s .8M%[1]s `+
		`%[6]sm%[8]s -.8l%[7]s .8l%[8]s .8" fill="none" stroke="#000" stroke-width=".25"/>`, num(x), num(end), num(y+1), num(y-1.5),
		num(p.mid+2.5), num(y), num(-s), num(s))
	p.text(j.From, (x+end)/2, y+smallSize*.75, "middle", true)
	p.text(j.At, label, y, anchor, true)
}

// Goes says where the wires that go on from splices lie, up to the breakouts.
func Goes(joints []Joint) string {
	var out []string
	for _, j := range joints {
		if j.Goes != "" {
			out = append(out, j.Goes)
		}
	}
	if len(out) == 0 {
		return ""
	}
	return "Lay from " + strings.Join(out, "; from ") + "."
}

// Over is the OD of the bundle with the sleeves of splices on it, alike ones together.
func Over(joints []Joint) string {
	var order []string
	ids := map[string][]string{}
	for _, j := range joints {
		if j.Over == "" {
			continue
		}
		if ids[j.Over] == nil {
			order = append(order, j.Over)
		}
		ids[j.Over] = append(ids[j.Over], j.ID)
	}
	for k, over := range order {
		order[k] = andOf(ids[over]) + " " + over
	}
	return strings.TrimSuffix("OD over "+strings.Join(order, ", ")+".", "OD over .")
}

// andOf is ids as a list in words.
func andOf(all []string) string {
	if n := len(all); n > 1 {
		return strings.Join(all[:n-1], ", ") + " and " + all[n-1]
	}
	return strings.Join(all, "")
}

// Colour is a wire's colour in words: "white/blue", "light blue"; its code where that has no words.
func Colour(w *model.Wire) string {
	if w.Colour.V == "" {
		return "-"
	}
	return strings.TrimSpace(string(w.Shade.V) + " " + model.ColourWords(w.Colour.V))
}

// stationFrom is how far a splice lies from the from end of the branch that it lies in; false where it lies in none, or
// the branch is not measured.
func stationFrom(s *sheet.Sheet, i int) (branch int, station unit.Millimetre, ok bool) {
	branch, station, ok = ends.StationOf(s, i)
	return branch, station, ok && s.H.Branches[branch].Measured()
}

// num is a number as short as SVG needs it.
func num(v float64) string {
	t := strings.TrimRight(strings.TrimRight(fmt.Sprintf("%.3f", v), "0"), ".")
	if t == "-0" {
		return "0"
	}
	return t
}
