package lists

import (
	"contralay/calc/phase/threading"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// TubeRow is one piece of tube that is cut: what it is of, where it lies on its branch, and how long it is cut.
type TubeRow struct {
	Branch       string
	What         sheet.PartKind
	Part         string
	FromMM, ToMM unit.Millimetre // from the branch's from end, when it is shrunk
	CutMM        unit.Millimetre // 0: in no catalogue, so how much it shortens is not known
}

// Tubes is every piece of tube or sleeve to cut, in the order they are threaded on.
func Tubes(s *sheet.Sheet) []TubeRow {
	var out []TubeRow
	for _, t := range threading.Threading(s) {
		if t.What.IsCover() && t.GoesOn != model.WoundOn {
			out = append(out, TubeRow{t.Of, t.What, t.Part, t.FromMM, t.ToMM, t.CutMM})
		}
	}
	return out
}

// MassRow is what one branch weighs, in grams.
type MassRow struct {
	Branch  int
	Bundle  model.Opt[unit.Gram] // wires, units and fillers; unset where one of them has no known mass
	Covers  model.Opt[unit.Gram] // sheath and whatever else covers it; unset where one of them is in no catalogue
	Without int                  // covers whose mass is not known
}

// Whole is bundle and covers; unset where one of them is.
func (r MassRow) Whole() model.Opt[unit.Gram] {
	return model.Opt[unit.Gram]{V: r.Bundle.V + r.Covers.V, Set: r.Bundle.Set && r.Covers.Set}
}

// Masses is what every branch weighs, with its covers. Connectors, contacts, boots, transitions, labels and adhesive are not in it.
func Masses(s *sheet.Sheet) []MassRow {
	var out []MassRow
	for i := range s.Branches {
		b := &s.Branches[i]
		r := MassRow{Branch: i, Bundle: b.Gram}
		if b.Sheath.Part != "" {
			r.add(b.Sheath.Gram)
		}
		for k := range b.Covers {
			r.add(b.Covers[k].Gram)
		}
		r.Covers.Set = r.Without == 0
		out = append(out, r)
	}
	return out
}

func (r *MassRow) add(g unit.Gram) {
	if !(g > 0) {
		r.Without++
		return
	}
	r.Covers.V += g
}
