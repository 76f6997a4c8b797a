package lists

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"contralay/calc/phase/bundle"
	"contralay/calc/phase/over"
	"contralay/calc/phase/threading"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// The bill of material: what one harness takes off the shelf, and what is ordered for it.

// BillRow is one thing that is bought. Need and Order are pieces, or metres where Metres is
// set; packs of adhesive are pieces.
type BillRow struct {
	Group    string // "wire", "sheath", "boot" …
	Part     string
	Colour   string // of wire: its code; each colour is a spool of its own
	Says     string
	Open     string // why it cannot be ordered yet; "" where it can
	Need     float64
	Order    float64
	Metres   bool
	Standing catalogue.Standing // of the count: memory where a length or size rests on it
	Stock    catalogue.Stock    // the shop's own number, supplier and pack; its zero where the shop lists none
	Packs    int                // of the pack that hold Order; 0: no pack is known
}

// orderMore is bought over the length of wire, tube and filler that is cut: ends of reels,
// a cut that goes wrong. Common practice, no source.
const orderMore = 0.10

// sampleMM is the wire that one sample crimp takes. Common practice, no source.
const sampleMM unit.Millimetre = 150

// Bill is what one harness takes: first what cannot be ordered yet, then wire by size and colour, filler, tape of binders and of
// built-up centres, tubes, braid of shields, moulded parts, connectors and other ends, contacts, seals and plugs, splices, solder
// sleeves, labels, flags, lacing, adhesive. Groups stand in that order.
func Bill(s *sheet.Sheet) []BillRow {
	var out []BillRow
	for _, rows := range []func(*sheet.Sheet) []BillRow{billWire, billFiller, billTape, billCovers, billShields, billMoulded, billEnds,
		billContacts, billJoints, billMarks, billLacing, billAdhesive} {
		out = append(out, rows(s)...)
	}
	for k := range out {
		stocked(s, &out[k])
	}
	slices.SortStableFunc(out, func(a, b BillRow) int { return cmp.Compare(rankOf(a), rankOf(b)) })
	return out
}

// rankOf puts what cannot be ordered yet first.
func rankOf(r BillRow) int {
	if r.Open != "" {
		return 0
	}
	return 1
}

// stocked puts the shop's own number, supplier and pack of a row beside it. What the shop has a number for can be ordered.
func stocked(s *sheet.Sheet, r *BillRow) {
	own, ok := s.Cat.StockOf(r.Group, r.Part, r.Colour)
	if !ok {
		return
	}
	r.Stock, r.Open = own, ""
	if own.Pack > 0 {
		r.Packs = int(math.Ceil(r.Order/own.Pack - 1e-9))
	}
}

func billAdhesive(s *sheet.Sheet) []BillRow {
	n := len(threading.Mixes(s))
	if n == 0 {
		return nil
	}
	return []BillRow{{Group: "adhesive", Part: s.Limits.Adhesive, Says: fmt.Sprintf("packs of %d joints", s.Limits.PackJoints),
		Need: float64(n), Order: float64(n)}}
}

// metres rounds a length up to whole tenths of a metre.
func metres(v unit.Millimetre) float64 { return math.Ceil(float64(v)/100-1e-9) / 10 }

// billFiller is filler by size: the length of each branch with its lay.
func billFiller(s *sheet.Sheet) []BillRow {
	length := map[unit.Millimetre]unit.Millimetre{}
	of := map[unit.Millimetre]string{} // what is no white wire is of what the shop says
	for i := range s.Branches {
		for _, l := range s.Branches[i].Layers {
			if l.Fillers > 0 {
				if _, kind, _ := bundle.FillerC(s, i, l.FillerMM); kind == "stock" {
					of[l.FillerMM] = s.Limits.FillerOf
				}
				length[l.FillerMM] += unit.Millimetre(l.Fillers) * s.H.Branches[i].LengthMM * unit.Millimetre(max(1, l.Loss))
			}
		}
	}
	var sizes []unit.Millimetre
	for d := range length {
		sizes = append(sizes, d)
	}
	slices.Sort(sizes)
	var out []BillRow
	for _, d := range sizes {
		out = append(out, BillRow{Group: "filler", Part: unit.Fixed(d, 2) + " mm", Says: of[d],
			Need: metres(length[d]), Order: metres(length[d] * (1 + orderMore)), Metres: true})
	}
	return out
}

func billCovers(s *sheet.Sheet) []BillRow {
	var out []BillRow
	add := func(kind model.CoverKind, part string, cut unit.Millimetre) {
		group := string(kind)
		if cut <= 0 || part == "" {
			return
		}
		index := slices.IndexFunc(out, func(r BillRow) bool { return r.Group == group && r.Part == part })
		if index < 0 {
			out = append(out, BillRow{Group: group, Part: part, Metres: true})
			index = len(out) - 1
		}
		out[index].Need += float64(cut) / 1000
	}
	for i := range s.Branches {
		b := &s.Branches[i]
		sheathMM := b.Sheath.CutMM
		if !b.Sheath.Tube.Set { // in no catalogue: how much longer it is cut nobody knows
			sheathMM = b.Sheath.ToMM - b.Sheath.FromMM
		}
		add(model.CoverSheath, b.Sheath.Part, sheathMM)
		for k := range b.Covers {
			switch c := &b.Covers[k]; {
			case isTape(c): // billTape has it
			case c.Tube.Set:
				add(c.What, c.Part, c.CutMM)
			default:
				add(c.What, cmp.Or(c.Part, "as stocked"), c.ToMM-c.FromMM)
			}
		}
	}
	for k := range out {
		mm := unit.Millimetre(out[k].Need * 1000)
		out[k].Need, out[k].Order = metres(mm), metres(mm*(1+orderMore))
		if t, ok := s.Cat.Tube(out[k].Part); ok {
			out[k].Says = t.ShelfLabel
		}
	}
	slices.SortStableFunc(out, func(a, b BillRow) int { return cmp.Or(-cmp.Compare(a.Group, b.Group), cmp.Compare(a.Part, b.Part)) })
	return out
}

// counted counts parts in the order they are met. What is said of a part tells it from another of its name: a connector
// with pins is not one with sockets.
type counted struct{ rows []BillRow }

func (c *counted) add(group, part, says string) {
	index := slices.IndexFunc(c.rows, func(r BillRow) bool { return r.Group == group && r.Part == part && r.Says == says })
	if index < 0 {
		c.rows = append(c.rows, BillRow{Group: group, Part: part, Says: says})
		index = len(c.rows) - 1
	}
	c.rows[index].Need++
	c.rows[index].Order++
}

func billMoulded(s *sheet.Sheet) []BillRow {
	var c counted
	for t := range s.H.Terminations {
		if boot := s.H.Terminations[t].Boot.V; boot != "" {
			c.add("boot", boot, "")
		}
	}
	for j := range s.H.Breakouts {
		if part := s.H.Breakouts[j].Transition.V; part != "" {
			c.add("transition", part, "")
		}
	}
	return c.rows
}

// billJoints is splices, with samples of each part, and the solder sleeves of shields.
func billJoints(s *sheet.Sheet) []BillRow {
	var c, sleeves counted
	var out []BillRow
	for i := range s.Splices {
		if part := s.Splices[i].Part; part != "" {
			c.add("splice", part, "and samples to pull")
			continue
		}
		out = append(out, BillRow{Group: "splice", Part: "of " + s.H.Splices[i].ID, Need: 1, Order: 1 + Samples,
			Open: "no part is chosen for it"})
	}
	for k := range c.rows {
		c.rows[k].Order += Samples
	}
	for _, e := range over.ShieldEnds(s) {
		if e.Sleeve > 0 {
			sleeves.add("solder sleeve", fmt.Sprintf("size %d", e.Sleeve), "with its lead")
		}
	}
	for k := range sleeves.rows {
		sleeves.rows[k].Standing = catalogue.Memory
	}
	return slices.Concat(out, c.rows, sleeves.rows)
}

// billMarks is labels, and the flags that every wire wears until its contact is in.
func billMarks(s *sheet.Sheet) []BillRow {
	var c counted
	for _, l := range Labels(s) {
		c.add("label", l.Sleeve, "")
	}
	if n := len(s.H.Wires); n > 0 {
		c.rows = append(c.rows, BillRow{Group: "wire flag", Part: "printed",
			Says: "one at each end of every wire; remove it when the contact is in", Need: float64(2 * n), Order: float64(2 * n)})
	}
	return c.rows
}

// Label is the marker sleeve of one end.
type Label struct {
	Of      string // termination
	Sleeve  string
	Text    []string
	OverMM  unit.Millimetre // what it shrinks on
	OnHours int             // the clock it reads from; 0 where none is given
}

// Labels are the labels of every end: text, and the sleeve for what it lies on there.
func Labels(s *sheet.Sheet) []Label {
	var out []Label
	for _, t := range threading.Threading(s) {
		if t.What != sheet.PartLabel {
			continue
		}
		term := &s.H.Terminations[s.Index.Termination[t.Of]]
		l := Label{Of: t.Of, Sleeve: t.Part, OverMM: t.PassMM, OnHours: term.BootClock.V, Text: []string{t.Of}}
		if term.Name.V != "" {
			l.Text = append(l.Text, term.Name.V)
		}
		if no := s.H.Head.Number.V; no != "" {
			l.Text = append(l.Text, no+" "+s.H.Head.Revision.V)
		}
		out = append(out, l)
	}
	return out
}
