package lists

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Wire as it is bought: a spool for each size and colour.

// SpoolRow is wire of one size and colour: what the harness takes of it, in mm.
type SpoolRow struct {
	Spec, Size string
	Colour     string // its code, with its shade where it has one; "" is not given
	NeedMM     unit.Millimetre
	Wires      int
}

// SpoolColour is what a wire's spool is known by beside its size: the code of its colour, and its shade.
func SpoolColour(w *model.Wire) string {
	return strings.TrimSpace(string(w.Shade.V) + " " + w.Colour.V)
}

// SpoolList is one row for each size and colour, in the order of CutList, by code of colour within a size.
func SpoolList(s *sheet.Sheet) []SpoolRow {
	var out []SpoolRow
	reel := map[[2]string]int{}
	for _, c := range CutList(s) {
		key := [2]string{c.Spec, c.Size}
		if _, met := reel[key]; !met {
			reel[key] = len(reel)
		}
		for _, k := range c.Wires {
			colour := SpoolColour(&s.H.Wires[k])
			index := slices.IndexFunc(out, func(r SpoolRow) bool { return r.Spec == c.Spec && r.Size == c.Size && r.Colour == colour })
			if index < 0 {
				out = append(out, SpoolRow{Spec: c.Spec, Size: c.Size, Colour: colour})
				index = len(out) - 1
			}
			out[index].NeedMM += c.CutMM
			out[index].Wires++
		}
	}
	slices.SortStableFunc(out, func(a, b SpoolRow) int {
		return cmp.Or(cmp.Compare(reel[[2]string{a.Spec, a.Size}], reel[[2]string{b.Spec, b.Size}]), cmp.Compare(a.Colour, b.Colour))
	})
	return out
}

// billWire is wire by size and colour. Samples of a size are crimped on the colour that there is most of.
func billWire(s *sheet.Sheet) []BillRow {
	crimps := sampleWires(s)
	spools := SpoolList(s)
	var out []BillRow
	for _, reel := range ReelList(s) {
		key := [2]string{reel.Spec, reel.Size}
		var own []SpoolRow
		most := 0
		for _, r := range spools {
			if r.Spec != reel.Spec || r.Size != reel.Size {
				continue
			}
			if own = append(own, r); r.NeedMM > own[most].NeedMM {
				most = len(own) - 1
			}
		}
		for k, r := range own {
			row := BillRow{Group: "wire", Part: r.Spec + " " + r.Size, Colour: r.Colour, Need: metres(r.NeedMM), Metres: true}
			var says []string
			more := unit.Millimetre(orderMore)
			if c, ok := s.Cat.Correction("wire used, " + r.Spec + " " + r.Size); ok { // what this shop takes off a reel
				more = max(0, unit.Millimetre(c.Bias+2*c.Spread))
				says = append(says, fmt.Sprintf("this shop takes %s %% more than it cuts", unit.Fixed(100*c.Bias, 1)))
			}
			want := r.NeedMM * (1 + more)
			if n := crimps[key]; k == most && n > 0 {
				want += unit.Millimetre(n) * sampleMM
				says = append(says, fmt.Sprintf("with %d sample crimps", n))
			}
			switch {
			case reel.Shelved && len(own) == 1:
				want = max(0, want-reel.ShelfMM)
				says = append(says, fmt.Sprintf("%s m on the shelf", unit.Fixed(metres(reel.ShelfMM), 1)))
			case reel.Shelved:
				says = append(says, fmt.Sprintf("%s m of this size on the shelf, in which colours is not said: not taken off",
					unit.Fixed(metres(reel.ShelfMM), 1)))
			}
			if row.Order = metres(want); r.Colour == "" {
				row.Open = "its colour is not given"
			}
			row.Says = strings.Join(says, "; ")
			out = append(out, row)
		}
	}
	return out
}

// sampleWires is how many ends of each size the sample crimps take: of several wires in one contact, each.
func sampleWires(s *sheet.Sheet) map[[2]string]int {
	out := map[[2]string]int{}
	for _, c := range CrimpList(s) {
		for _, size := range strings.Split(c.Size, " + ") {
			out[[2]string{c.Spec, size}] += Samples
		}
	}
	return out
}

// billShields is the braid of units that are shielded, and the jacket over it: from loop to loop, less what is stripped
// back. Which they are says the shop.
func billShields(s *sheet.Sheet) []BillRow {
	var out []BillRow
	for i := range s.H.Units {
		u := &s.H.Units[i]
		long, ok := shieldMM(s, i)
		if !u.Shield.V || !ok {
			continue
		}
		for _, what := range []string{"shield braid", "shield jacket"} {
			row := BillRow{Group: what, Part: "as stocked", Need: metres(long), Order: metres(long * (1 + orderMore)), Metres: true,
				Says: u.ID}
			if what == "shield braid" && s.Units[i].BareMM > 0 {
				row.Says = fmt.Sprintf("over %s mm: %s", unit.Fixed(s.Units[i].BareMM, 1), u.ID)
			} else if d := s.Units[i].Dia; d.Known() {
				row.Says = fmt.Sprintf("to %s mm OD: %s", unit.Fixed(d.Nominal, 1), u.ID)
			}
			index := slices.IndexFunc(out, func(r BillRow) bool {
				a, _, _ := strings.Cut(r.Says, ": ")
				b, _, _ := strings.Cut(row.Says, ": ")
				return r.Group == what && a == b
			})
			if index < 0 {
				out = append(out, row)
				continue
			}
			out[index].Need, out[index].Order, out[index].Says = out[index].Need+row.Need, out[index].Order+row.Order,
				out[index].Says+", "+u.ID
		}
	}
	slices.SortStableFunc(out, func(a, b BillRow) int { return cmp.Compare(a.Group, b.Group) })
	return out
}

// shieldMM is how long the shield of a unit is: its way through the branches with its loops, less what is stripped back at
// both ends; false where the length of its wires is not known.
func shieldMM(s *sheet.Sheet, i int) (unit.Millimetre, bool) {
	u := &s.H.Units[i]
	if len(u.Wires) == 0 {
		return 0, false
	}
	k, ok := s.Index.Wire[u.Wires[0]]
	if !ok || s.Wires[k].Finished <= 0 || !(s.Units[i].Loss >= 1) {
		return 0, false
	}
	loops := loopsOf(s, k)
	long := (s.Wires[k].Finished-loops)/unit.Millimetre(s.Units[i].Loss) + loops - 2*u.StripMM.V
	return max(0, long), true
}

// billLacing is what ties the bundle: at both sides of a breakout, each branch there, and at both ends of a splice. Source of
// where: NASA's workmanship sheets 4.02 and 4.07. tieMM is common practice, no source.
func billLacing(s *sheet.Sheet) []BillRow {
	ties := 2 * len(s.H.Splices)
	for j := range s.H.Breakouts {
		ties += len(s.Index.Meeting(s.H.Breakouts[j].ID))
	}
	if ties == 0 {
		return nil
	}
	return []BillRow{{Group: "lacing", Part: "tape or thread", Metres: true, Need: metres(unit.Millimetre(ties) * tieMM),
		Order: metres(unit.Millimetre(ties) * tieMM * (1 + orderMore)), Standing: catalogue.Practice,
		Says: fmt.Sprintf("%d ties of %s mm", ties, unit.Fixed(tieMM, 0))}}
}

// tieMM is what one tie takes off the roll.
const tieMM unit.Millimetre = 300
