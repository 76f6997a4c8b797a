package lists

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

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
	Says     string
	Need     float64
	Order    float64
	Metres   bool
	Standing catalogue.Standing // of the count: memory where a length or size rests on it
}

// orderMore is bought over the length of wire, tube and filler that is cut: ends of reels,
// a cut that goes wrong. Common practice, no source.
const orderMore = 0.10

// sampleMM is the wire that one sample crimp takes. Common practice, no source.
const sampleMM unit.Millimetre = 150

// Bill is what one harness takes: wire by reel, filler, tape of binders and of built-up centres, tubes, moulded parts, contacts and
// plugs, splices, solder sleeves, labels, flags, adhesive. Groups stand in that order.
func Bill(s *sheet.Sheet) []BillRow {
	var out []BillRow
	out = append(out, billWire(s)...)
	out = append(out, billFiller(s)...)
	out = append(out, billTape(s)...)
	out = append(out, billCovers(s)...)
	out = append(out, billMoulded(s)...)
	for _, b := range BuyList(s) {
		part := cmp.Or(b.Part, "size "+b.Size)
		out = append(out, BillRow{Group: "contact", Part: part,
			Says: "size " + b.Size + ", " + cmp.Or(string(b.Gender), "the device's own"),
			Need: float64(b.Wired + b.Unwired), Order: float64(b.Buy())})
		if b.Plugs > 0 {
			out = append(out, BillRow{Group: "seal plug", Part: cmp.Or(b.Plug, "for size "+b.Size),
				Says: "one in each cavity without a wire", Need: float64(b.Plugs), Order: math.Ceil(float64(b.Plugs) * (1 + buyMore))})
		}
	}
	out = append(out, billJoints(s)...)
	out = append(out, billMarks(s)...)
	if n := len(threading.Mixes(s)); n > 0 {
		out = append(out, BillRow{Group: "adhesive", Part: s.Limits.Adhesive, Says: fmt.Sprintf("packs of %d joints", s.Limits.PackJoints),
			Need: float64(n), Order: float64(n)})
	}
	return out
}

// metres rounds a length up to whole tenths of a metre.
func metres(v unit.Millimetre) float64 { return math.Ceil(float64(v)/100-1e-9) / 10 }

func billWire(s *sheet.Sheet) []BillRow {
	crimps := map[[2]string]int{}
	for _, c := range CrimpList(s) {
		crimps[[2]string{c.Spec, c.Size}] += samples
	}
	var out []BillRow
	for _, r := range ReelList(s) {
		row := BillRow{Group: "wire", Part: r.Spec + " " + r.Size, Need: metres(r.NeedMM), Metres: true}
		var says []string
		more := unit.Millimetre(orderMore)
		if c, ok := s.Cat.Correction("wire used, " + r.Spec + " " + r.Size); ok { // what this shop takes off a reel
			more = max(0, unit.Millimetre(c.Bias+2*c.Spread))
			says = append(says, fmt.Sprintf("this shop takes %s %% more than it cuts", unit.Fixed(100*c.Bias, 1)))
		}
		want := r.NeedMM*(1+more) + unit.Millimetre(crimps[[2]string{r.Spec, r.Size}])*sampleMM
		if row.Order = metres(max(0, want-r.ShelfMM)); r.Shelved {
			says = append(says, fmt.Sprintf("%s m on the shelf", unit.Fixed(metres(r.ShelfMM), 1)))
		}
		row.Says = strings.Join(says, "; ")
		out = append(out, row)
	}
	return out
}

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
		for _, c := range b.Covers {
			if c.Tube.Set {
				add(c.What, c.Part, c.CutMM)
			} else {
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

// counted counts parts in the order they are met.
type counted struct{ rows []BillRow }

func (c *counted) add(group, part, says string) {
	index := slices.IndexFunc(c.rows, func(r BillRow) bool { return r.Group == group && r.Part == part })
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
		if ins := s.H.Terminations[t].Insert.V; ins != "" {
			c.add("connector", ins, cmp.Or(string(s.H.Terminations[t].Gender.V), "gender not given"))
		}
	}
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
	var c counted
	for i := range s.Splices {
		if part := s.Splices[i].Part; part != "" {
			c.add("splice", part, "and samples to pull")
		}
	}
	for k := range c.rows {
		c.rows[k].Order += samples
	}
	n := len(c.rows)
	for _, e := range over.ShieldEnds(s) {
		if e.Sleeve > 0 {
			c.add("solder sleeve", fmt.Sprintf("size %d", e.Sleeve), "with its lead")
		}
	}
	for k := n; k < len(c.rows); k++ {
		c.rows[k].Standing = catalogue.Memory
	}
	return c.rows
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
