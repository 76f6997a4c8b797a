package lists

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"contralay/calc/formula/crimp"
	"contralay/calc/formula/join"
	"contralay/calc/phase/ends"
	"contralay/calc/phase/length"
	"contralay/calc/phase/wires"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// What is taken off the shelf before the board: wire by reel, contacts, tools, units.

// CutRow is wires of one size that are cut to one length.
type CutRow struct {
	Spec, Size string
	CutMM      unit.Millimetre
	Wires      []int
}

// CutList is what is cut off each reel, longest first, like lengths together. Reels stand
// in the order their first wire has in the file.
func CutList(s *sheet.Sheet) []CutRow {
	var out []CutRow
	reel := map[[2]string]int{}
	for k := range s.Wires {
		w, c := &s.H.Wires[k], &s.Wires[k]
		if c.Cut <= 0 {
			continue
		}
		key := [2]string{w.Spec, catalogue.CanonicalSize(w.Size)}
		if _, met := reel[key]; !met {
			reel[key] = len(reel)
		}
		index := slices.IndexFunc(out, func(r CutRow) bool {
			return r.Spec == key[0] && r.Size == key[1] && r.CutMM == c.Cut
		})
		if index < 0 {
			out = append(out, CutRow{key[0], key[1], c.Cut, nil})
			index = len(out) - 1
		}
		out[index].Wires = append(out[index].Wires, k)
	}
	slices.SortStableFunc(out, func(a, b CutRow) int {
		return cmp.Or(cmp.Compare(reel[[2]string{a.Spec, a.Size}], reel[[2]string{b.Spec, b.Size}]), -cmp.Compare(a.CutMM, b.CutMM))
	})
	return out
}

// ReelRow is how much of a size is needed, and how much the file says there is.
type ReelRow struct {
	Spec, Size string
	NeedMM     unit.Millimetre
	ShelfMM    unit.Millimetre
	Shelved    bool // ShelfMM is known
}

// ReelList is one row for each size, in the order of CutList. Filler off a reel is not in it.
func ReelList(s *sheet.Sheet) []ReelRow {
	var out []ReelRow
	for _, c := range CutList(s) {
		index := slices.IndexFunc(out, func(r ReelRow) bool { return r.Spec == c.Spec && r.Size == c.Size })
		if index < 0 {
			r := ReelRow{Spec: c.Spec, Size: c.Size}
			if reel, ok := wires.Reel(s, c.Spec, c.Size); ok && reel.ShelfM.Set {
				r.ShelfMM, r.Shelved = unit.Millimetre(reel.ShelfM.V*1000), true
			}
			out = append(out, r)
			index = len(out) - 1
		}
		out[index].NeedMM += c.CutMM * unit.Millimetre(len(c.Wires))
	}
	return out
}

// CrimpRow is contacts of one part on wires of one size.
type CrimpRow struct {
	Contact    string // size
	Part       string // "" not known
	Circular   bool   // in an insert of the catalogue: AS39029
	Spec, Size string
	Together   string // where several wires share it, Size being "22 + 22": the size they count as
	Count      int
	StripMin   unit.Millimetre // 0: the well is not known
	StripMax   unit.Millimetre
	Tool       model.Opt[crimp.Tool] // unset where no tool is known for the contact
	Step       int                   // 0: not known
	StepGuess  bool                  // it is from memory
	PullN      unit.Newton           // 0: not known
	PullBy     catalogue.Origin
}

// Samples is how many are crimped and pulled before the day's first real one: common
// practice, no source. buyMore is what is bought over the count, likewise.
const (
	Samples = 3
	buyMore = 0.05
)

// CrimpOf is how the contact in a cavity is crimped; its Count is 0. False where no wire is in the
// cavity, or no contact size is known for it.
func CrimpOf(s *sheet.Sheet, t int, cavity string) (CrimpRow, bool) {
	c := s.Terms[t].State[cavity]
	if len(c.Wires) == 0 || c.Size == "" {
		return CrimpRow{}, false
	}
	w := &s.H.Wires[s.Index.Wire[c.Wires[0]]]
	_, circular := s.Cat.Insert(s.H.Terminations[t].Insert.V)
	r := CrimpRow{Contact: c.Size, Part: contactPart(s, t, c.Size), Circular: circular, Spec: w.Spec,
		Size: catalogue.CanonicalSize(w.Size)}
	if len(c.Wires) > 1 {
		r.Size, r.Together = together(s, c.Wires)
	}
	howToCrimp(s, &r, s.H.Terminations[t].Gender.V)
	return r, true
}

// Alike reports whether two crimps are made alike: of one contact, on wire of one size.
func (r CrimpRow) Alike(o CrimpRow) bool {
	return o.Contact == r.Contact && o.Part == r.Part && o.Circular == r.Circular && o.Spec == r.Spec && o.Size == r.Size
}

// CrimpList is every crimp of contacts, by contact and wire size, thickest contact first.
func CrimpList(s *sheet.Sheet) []CrimpRow {
	var out []CrimpRow
	for t := range s.Terms {
		for _, name := range s.Terms[t].Cavities {
			r, ok := CrimpOf(s, t, name)
			if !ok {
				continue
			}
			index := slices.IndexFunc(out, r.Alike)
			if index < 0 {
				out = append(out, r)
				index = len(out) - 1
			}
			out[index].Count++
		}
	}
	slices.SortStableFunc(out, func(a, b CrimpRow) int {
		return cmp.Or(cmp.Compare(a.Contact, b.Contact), cmp.Compare(a.Part, b.Part), cmp.Compare(a.Size, b.Size))
	})
	return out
}

// together is the sizes of wires that share one contact, and the size their circular
// mils come to: equal, or the next larger. Source: NASA-STD-8739.4 § 19.11, p. 86. "" where
// no size is known for them.
func together(s *sheet.Sheet, ids []string) (names, as string) {
	var sizes []string
	area, known := unit.SquareMM(0), true
	for _, id := range ids {
		k := s.Index.Wire[id]
		sizes = append(sizes, catalogue.CanonicalSize(s.H.Wires[k].Size))
		known = known && s.Wires[k].Entry.AreaMM2 > 0
		area += s.Wires[k].Entry.AreaMM2
	}
	slices.Sort(sizes)
	if !known {
		return strings.Join(sizes, " + "), ""
	}
	for awg := 28; awg >= 0; awg -= 2 { // the sizes that are made
		if a, ok := ends.StrandedArea(s.Cat, fmt.Sprint(awg)); ok && area <= a*areaAlike {
			return strings.Join(sizes, " + "), fmt.Sprint(awg)
		}
	}
	return strings.Join(sizes, " + "), ""
}

// areaAlike lets two 20 AWG (2432 circular mils) count as a 16 AWG (2426): within 1 %.
const areaAlike = join.Slack

func howToCrimp(s *sheet.Sheet, r *CrimpRow, gender model.Gender) {
	awg, ok := catalogue.AWGNumber(cmp.Or(r.Together, r.Size))
	if !ok {
		return
	}
	e, known := s.Cat.Contact(r.Contact)
	if known && e.WellMM > 0 && r.Circular {
		r.StripMin, r.StripMax, _ = crimp.Strip(e.WellMM, awg)
	}
	if r.Circular && gender != "" {
		if tool, ok := crimp.ToolFor(r.Contact, string(gender)); ok {
			r.Tool = model.Some(tool)
		}
	}
	if r.Tool.Set {
		r.Step, r.StepGuess, _ = crimp.Setting(r.Tool.V.Frame, awg)
	}
	kind := crimp.Commercial
	if r.Circular {
		kind = crimp.Contact
	}
	var source crimp.Source
	first, _, _ := strings.Cut(r.Size, " + ")
	onWire, _ := s.Cat.Wire(r.Spec, first)
	r.PullN, source, _ = crimp.Pull(kind, awg, onWire.Plating == "nickel")
	r.PullBy = catalogue.Origin{Source: source.Text, Standing: catalogue.Published}
	if source.Memory {
		r.PullBy.Standing = catalogue.Memory
	}
}

// contactPart is the part number of a contact size in a termination: a pin, or the
// socket of its connector's series, which is the second where the arrangement is called
// by that series' name. "" where the gender is not given or the catalogue has none.
func contactPart(s *sheet.Sheet, t int, size string) string {
	term := &s.H.Terminations[t]
	e, ok := s.Cat.Contact(size)
	ins, known := s.Cat.Insert(term.Insert.V)
	switch {
	case !ok || !known || term.Gender.V == "":
		return ""
	case term.Gender.V == model.GenderPin:
		return e.Pin
	case ins.ID == term.Insert.V && e.SocketII != "" && !slices.Contains(ins.Aliases, term.Insert.V):
		return e.SocketII
	}
	return e.Socket
}

// BuyRow is contacts of one size and part to be bought, and the plugs that seal what is
// not wired.
type BuyRow struct {
	Size, Part     string
	Gender         model.Gender
	Wired, Unwired int
	Samples, More  int
	Plug           string
	Plugs          int
	Stubs          int // stubs of wire that go with them, in a firewall
}

// Buy is how many contacts come off the shelf.
func (b BuyRow) Buy() int { return b.Wired + b.Unwired + b.Samples + b.More }

// BuyList is the contacts to buy: wired ones, those that close an unwired cavity of a
// sealed connector (with its plug), samples for each size of wire, and 5 % more.
func BuyList(s *sheet.Sheet) []BuyRow {
	var out []BuyRow
	row := func(t int, size string) *BuyRow {
		part, gender := contactPart(s, t, size), s.H.Terminations[t].Gender.V
		index := slices.IndexFunc(out, func(r BuyRow) bool { return r.Size == size && r.Part == part && r.Gender == gender })
		if index < 0 {
			e, _ := s.Cat.Contact(size)
			r := BuyRow{Size: size, Part: part, Gender: gender}
			if _, circular := s.Cat.Insert(s.H.Terminations[t].Insert.V); circular { // a device's connector has plugs of its own
				r.Plug = e.SealPlug
			}
			out = append(out, r)
			index = len(out) - 1
		}
		return &out[index]
	}
	for t := range s.Terms {
		for _, name := range s.Terms[t].Cavities {
			switch c := s.Terms[t].State[name]; {
			case c.Size == "":
			case len(c.Wires) > 0 || c.Drain != "":
				row(t, c.Size).Wired++
			case s.Terms[t].Sealed:
				r := row(t, c.Size)
				r.Unwired++
				r.Plugs++
				if s.H.Terminations[t].Firewall.V {
					r.Stubs++
				}
			}
		}
	}
	for _, c := range CrimpList(s) {
		for k := range out {
			if out[k].Size == c.Contact && out[k].Part == c.Part {
				out[k].Samples += Samples
				break
			}
		}
	}
	for k := range out {
		r := &out[k]
		r.More = int(math.Ceil(float64(r.Wired+r.Unwired+r.Samples) * buyMore))
	}
	slices.SortStableFunc(out, func(a, b BuyRow) int { return cmp.Or(cmp.Compare(a.Size, b.Size), cmp.Compare(a.Part, b.Part)) })
	return out
}

// FlatTakeUp is the share a flat rule adds to a finished length for lay and taping: 20 %,
// of a wire association's note on hand-laid bundles.
const FlatTakeUp = 0.20

// TakeUp is what the twist makes a wire longer than its way, and what the flat rule
// would have added to it; false where its length is not known.
func TakeUp(s *sheet.Sheet, k int) (laid, flat unit.Millimetre, ok bool) {
	c := &s.Wires[k]
	if c.Finished <= 0 {
		return 0, 0, false
	}
	way := unit.Millimetre(0)
	for _, b := range c.Path {
		way += s.H.Branches[b].LengthMM
	}
	w := &s.H.Wires[k]
	way += length.SpliceOffset(s, w.From.V, c.Path) + length.SpliceOffset(s, w.To.V, c.Path)
	loops := length.Loop(s, w.From.V) + length.Loop(s, w.To.V)
	return c.Finished - loops - way, way * FlatTakeUp, true
}
