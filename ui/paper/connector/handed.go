package connector

import (
	"html/template"
	"strings"

	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/paper/cavity"
	"contralay/ui/paper/face"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
	"contralay/ui/paper/svg"
)

// What goes with a harness that is handed over is the same pins, without what is ticked when they are made.

// Lead is one thing in a cavity, and where it leads to: a wire, or the drain of a shield.
type Lead struct {
	End, Cavity, Also string
	Wire              string // its id; "drain" of a shield's drain
	Colour, Signal    string
	To                string // the end at its other side, or "shield of C1"
}

// Leads is what is in the cavities of a termination, in their order. An empty cavity has none.
func Leads(m list.Maker, t int) (out []Lead) {
	for _, p := range Pins(m, t) {
		for _, r := range rowsOf(m, p) {
			l := Lead{End: p.End, Cavity: p.Cavity, Also: alsoText(p), To: r.far}
			switch {
			case r.wire != nil:
				l.Wire, l.Colour, l.Signal = r.wire.ID, colourOf(r.wire), r.wire.Signal.V
			case r.Drain != "":
				l.Wire = "drain"
			default:
				continue
			}
			out = append(out, l)
		}
	}
	return out
}

// Cell is the cavity of a lead as a cell, before it its end ("P1:", or nothing).
func (l Lead) Cell(end string, bold bool) page.Cell { return cavity.Cell(end, l.Cavity, l.Also, bold) }

// Empty is a sentence for each way in which cavities of a termination stay empty.
func Empty(m list.Maker, t int, wide unit.Millimetre) []page.Block {
	return empties(m.H.Terminations[t].ID+": ", Pins(m, t), wide)
}

// Contacts is the parts of the contacts of a termination, with the tool that takes them out: "size 22D,
// M39029/56-348, out by M81969/14-01". Each once, in the order its cavities have them.
func Contacts(m list.Maker, t int) (out []string) {
	for _, c := range crimpsOf(m, t) {
		says := crimpedContact(c)
		if tool := InsertionTool(c); tool != "" {
			says += ", in and out by " + tool
		}
		if len(out) == 0 || out[len(out)-1] != says {
			out = append(out, says)
		}
	}
	return out
}

// Pictured is the face of a termination as narrow as its numbers allow in letters of 9 pt.
type Pictured struct {
	Picture page.Block
	Wide    unit.Millimetre
	Legend  func(wide unit.Millimetre) []page.Block
}

// Face is the face of a termination; why says in a sentence why there is none to show, "" of one that has no
// insert in the catalogue.
func Face(m list.Maker, t int) (p Pictured, ok bool, why string) {
	if _, known := m.S.Cat.Insert(m.H.Terminations[t].Insert.V); !known {
		return p, false, ""
	}
	pins := Pins(m, t)
	f, why := faceOf(m, t, pins)
	if why != "" {
		return p, false, strings.TrimSuffix(why, " Pin by the list.")
	}
	const size = 9 * page.MillimetrePerPoint
	d, ok := face.Draw(f, face.Least(f, size, mostFace))
	if !ok {
		return p, false, "No face is drawn: a page has no room for one with letters of 9 pt."
	}
	var b strings.Builder
	svg.Write(&b, d.Sheet, "face")
	box := d.Sheet.Box
	p.Wide = box.High.X - box.Low.X
	p.Picture = page.Picture(template.HTML(b.String()), box.High.Y-box.Low.Y) // #nosec: the writer escapes
	p.Legend = func(wide unit.Millimetre) []page.Block { return legend(f, d, wide) }
	return p, true, ""
}

// Gendered is the gender of a termination in a word; "" where the file has none.
func Gendered(e *model.Termination) string {
	return map[model.Gender]string{model.GenderPin: "pins", model.GenderSocket: "sockets"}[e.Gender.V]
}
