package paper

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/shorttest"
	"contralay/model/unit"
	"contralay/ui/paper/laycard"
	"contralay/ui/paper/list"
)

// inMM is a length in mm in what a person reads; a cross-section in mm² is none.
var inMM = regexp.MustCompile(`[0-9,] mm\b`)

// inInches is a file of testdata with its lengths in inches, much of it spoilt: legs that are
// too short, bends too tight, tubes too narrow, covers off their branch, splices at the ends.
func inInches(t *testing.T, name string, spoilt bool) *sheet.Sheet {
	t.Helper()
	s := sheetFile(t, name)
	h := *s.H
	h.Head.Units = model.Some("in")
	if spoilt {
		h.Branches = slices.Clone(h.Branches)
		for k := range h.Branches {
			b := &h.Branches[k]
			b.BendMM, b.BendDeg = model.Some[unit.Millimetre](5), model.Some[unit.Degree](90)
			b.LengthMM = max(40, b.LengthMM/5)
			part := []string{"AS23053/16 3.2", "AS23053/16 25.4", "AS23053/16 9.5"}[k%3]
			b.Covers = []model.Cover{{What: model.CoverSheath, Part: model.Some(part)}, {What: model.CoverSleeve,
				Part: model.Some(part), FromMM: model.Some[unit.Millimetre](10), ToMM: model.Some[unit.Millimetre](5000)}}
		}
		h.Terminations = slices.Clone(h.Terminations)
		for k := range h.Terminations {
			e := &h.Terminations[k]
			e.SealMM, e.LoopMM, e.SpaceMM = []unit.Millimetre{2.5, 3}, model.Some[unit.Millimetre](90), model.Some[unit.Millimetre](20)
			e.Boot, e.Clock, e.BootClock = model.Some([]string{"boot-90-18", "boot-straight-18"}[k%2]), model.Some(1+k%12),
				model.Some(1+k%12)
		}
		h.Splices = slices.Clone(h.Splices)
		for k := range h.Splices {
			h.Splices[k].OffsetMM = model.Some[unit.Millimetre](9000)
		}
		h.Rules.FillerC = model.Some[unit.Celsius](30)
	}
	// It is laid as the file is: how a spoilt one would be laid is not what the tests here are for.
	return calc.Build(&h, s.Base, &sheet.Sheet{H: &model.Harness{}, Proposals: s.Proposals})
}

// A page in inches has no length in mm: neither its figures nor a sentence on it, nor what
// check says, nor a list of it.
func TestInchesOnEveryPage(t *testing.T) {
	sentences := 0
	for _, name := range append(shorttest.Some([]string{"demo", "every-key", "feeds", "trunk", "whole"}), "example") {
		if testing.Short() && name != "demo" && name != "example" {
			continue
		}
		if name == "whole" && !shorttest.Long() {
			continue // the large one
		}
		for _, spoilt := range []bool{false, true} {
			s := inInches(t, name, spoilt)
			made, err := Make(s, Meta{})
			if err != nil {
				t.Fatal(err)
			}
			texts := map[string]string{"check": Check(s), "page": string(made.HTML)}
			for _, l := range made.Lists {
				text, err := CSV(l)
				if err != nil {
					t.Fatal(err)
				}
				texts[l.File] = string(text)
			}
			for what, text := range texts {
				for _, at := range inMM.FindAllStringIndex(text, -1) {
					if !strings.HasPrefix(text[at[1]:], "²") {
						t.Errorf("%s, spoilt %v, %s: %q", name, spoilt, what, text[max(0, at[0]-60):min(len(text), at[1]+30)])
					}
				}
			}
			for _, g := range s.Snags {
				if strings.Contains(g.Says, " mm") {
					sentences++
				}
			}
		}
	}
	if sentences < 20 {
		t.Errorf("only %d sentences have a length: this tests too little", sentences)
	}
}

// A length to cut and a least bend are never shorter on a page or in a list in inches than
// they are, and by less than a sixteenth longer.
func TestCutInInches(t *testing.T) {
	s := inInches(t, "demo", false)
	made, err := Make(s, Meta{})
	if err != nil {
		t.Fatal(err)
	}
	count := 0
	check := func(what, shown string, v unit.Millimetre) {
		t.Helper()
		got, err := unit.Inch.Parse(shown)
		if count++; err != nil || got < v-0.001 || got > v+unit.MillimetrePerInch/16 {
			t.Errorf("%s: %q in for %v mm (%v)", what, shown, v, err)
		}
	}
	for _, l := range made.Lists {
		at := func(head string) int {
			return slices.IndexFunc(l.Head, func(h string) bool { return h == head })
		}
		for _, r := range l.Rows {
			switch l.File {
			case "cut-list":
				if k, ok := s.Index.Wire[r[at("wire")]]; ok {
					check("cut of "+r[at("wire")], r[at("cut, in")], s.Wires[k].Cut)
				}
			case "branches":
				if k, ok := s.Index.Branch[r[0]]; ok {
					check("bend of "+r[0], r[at("bend at least, in")], s.Branches[k].Bend.MinMM)
				}
			}
		}
	}
	for i := range s.Branches {
		for _, row := range laycard.CardOf(list.MakerOf(s), i).Covers {
			if sh := &s.Branches[i].Sheath; sh.Tube.Set && row.Part == sh.Part {
				check("sheath of "+s.H.Branches[i].ID, row.Cut, sh.CutMM)
			}
		}
	}
	if count < 40 {
		t.Errorf("only %d lengths are compared", count)
	}
}
