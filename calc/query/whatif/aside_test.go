package whatif_test

import (
	"fmt"
	"reflect"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/query/whatif"
	"contralay/model"
)

// Each way of a small branch set aside says what is its own, and taken up again it is the harness that the way gives.
func TestEachWayIsTakenUpAgain(t *testing.T) {
	text := strings.Replace(calctest.OneSize(8, "20", "length_mm = 400.0\nmake = \"laid\"\n"+calctest.CoverText("sheath",
		"part = \"AS23053/16 9.5\"\n")+
		"[[branch.layer]]\nof = [\"0\"]\n[[branch.layer]]\nof = [\"1\", \"2\", \"3\", \"4\", \"5\", \"6\", \"7\"]\n", 12),
		"format = 1\n", "format = 1\n[rules]\nspares_wanted = 0\n", 1)
	text = strings.ReplaceAll(text, "size = \"20\"\n", "size = \"20\"\namps = 1.0\n")
	s := calctest.Built(t, text)
	if first := s.Branches[0].Sheath.Others[0].Tube.ID; first != "AS23053/16 9.5" { // the best of its kind, so that it follows
		s = calctest.Built(t, strings.Replace(text, "AS23053/16 9.5", first, 1))
	}
	was := s.H.Branches[0]
	met, follows := map[string]int{}, false
	for _, kind := range whatif.Kinds(s, 0) {
		for n, v := range kind.Values {
			if n != kind.Now && met[kind.ID] == 1 { // one of each is enough
				continue
			}
			h, err := whatif.Changed(s, 0, v)
			a, failed := whatif.Aside(s, 0, v)
			if (err == nil) != (failed == nil) || err != nil && err.Error() != failed.Error() {
				t.Errorf("%s: %v, aside %v", v.Key, err, failed)
			}
			if err != nil {
				continue
			}
			if n == kind.Now { // to come back to: all that it is
				if h != s.H || len(a.Layers) != 2 || len(a.Covers) != 1 || a.Make.V != model.MakeLaid || a.Spec.Set || a.Sizes != nil ||
					a.Spares.Set ||
					a.Outer != was.Outer {
					t.Errorf("%s is the present: %+v", v.Key, a)
				}
			} else {
				met[kind.ID]++
				id, _, _ := strings.Cut(kind.ID, " ")
				if a.Name != v.Name() || a.Letter != was.FreeLetter() || a.Spec.Set != (id == "spec") ||
					(len(a.Sizes) > 0) != (id == "size") ||
					a.Spares.Set != (id == "spares") || a.Outer.Set != (id == "hand") || id == "sheath" && (len(a.Covers) != 1 ||
					a.Covers[0].Part == was.Covers[0].Part) ||
					id == "hand" && (len(a.Layers) > 0 || len(a.Covers) > 0) {
					t.Errorf("%s: %+v", v.Key, a)
				}
			}
			back, gone, err := whatif.Taken(s, 0, a)
			if err != nil || len(gone) > 0 || !reflect.DeepEqual(back.Wires, h.Wires) || !reflect.DeepEqual(back.Branches[0].Layers,
				h.Branches[0].Layers) ||
				!reflect.DeepEqual(back.Branches[0].Covers, h.Branches[0].Covers) || back.Branches[0].Outer != h.Branches[0].Outer {
				t.Errorf("%s: %v %v\n%+v\n%+v", v.Key, err, gone, back.Branches[0], h.Branches[0])
			}
			if a.Spec.Set || a.Sizes != nil || a.Spares.Set { // what it leaves out follows
				a.Layers, a.Covers, a.Make = nil, nil, model.Opt[model.Make]{}
				back, _, err := whatif.Taken(s, 0, a)
				if err != nil || !reflect.DeepEqual(back.Branches[0].Covers, h.Branches[0].Covers) || !reflect.DeepEqual(back.Wires,
					h.Wires) {
					t.Errorf("%s alone: %v\n%+v\n%+v", v.Key, err, back.Branches[0], h.Branches[0])
				}
				follows = follows || back.Branches[0].Covers[0].Part != was.Covers[0].Part
			}
			built, err := whatif.Built(s, 0, v)
			if by := calc.Build(h, s.Base, s).Branches[0]; err != nil || built.Branches[0].OverMM != by.OverMM ||
				built.Branches[0].Sheath.Part != by.Sheath.Part {
				t.Errorf("%s: built %v, by its harness %v: %v", v.Key, built.Branches[0].OverMM, by.OverMM, err)
			}
		}
	}
	for _, id := range []string{"spares", "hand", "size 20", "spec", "sheath"} {
		if met[id] == 0 {
			t.Errorf("no way of %s: %v", id, met)
		}
	}
	if !follows {
		t.Error("the sheath follows nothing")
	}
	// What stands in the kinds by hand: the hand is the one of the rules, the sheath of its kind, spares from none to what cavities leave.
	says := map[string]string{}
	for _, kind := range whatif.Kinds(s, 0) {
		if kind.Now >= 0 {
			says[kind.ID] = kind.Values[kind.Now].Says
		}
		if kind.ID == "spares" && (len(kind.Values) != 5 || kind.Now != 0) {
			t.Errorf("%+v", kind)
		}
	}
	if got := fmt.Sprint(says["sheath"], says["spec"], says["size 20"], says["spares"],
		says["hand"] == string(s.Limits.Outer)); got != "AS23053/16AS22759/32200true" {
		t.Errorf("%s: %v", got, says)
	}
}
