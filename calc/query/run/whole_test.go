package run_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/phase/built"
	"contralay/calc/phase/threading"
	"contralay/calc/query/lists"
	runquery "contralay/calc/query/run"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// kitchen is a loom with everything that goes over wires: tape beneath a sheath and over it, a braid, a moulded breakout, a boot,
// adhesive; and a splice of which no part is chosen. All of it is straight, so that lengths are by hand.
const kitchen = `format = 1
[harness]
number = "K1"
revision = "B"
[rules]
adhesive = "epoxy"
[[termination]]
id = "P1"
name = "Box"
insert = "18-32"
gender = "pin"
key = "N"
mount = "inline"
boot = "boot-straight-18"
[[termination]]
id = "A"
cavities = ["1", "2"]
contacts = { "20" = ["1", "2"] }
[[termination]]
id = "B"
device = "stud M6"
[[breakout]]
id = "J1"
transition = "own"
[[splice]]
id = "S1"
at = "J1"
[[wire]]
id = "101"
from = "P1:A"
to = "A:1"
spec = "AS22759/32"
size = "22"
colour = "1"
[[wire]]
id = "102"
from = "P1:B"
to = "A:2"
spec = "AS22759/32"
size = "22"
colour = "2"
[[wire]]
id = "103"
from = "P1:C"
to = "S1"
spec = "AS22759/32"
size = "20"
colour = "2"
[[wire]]
id = "104"
from = "S1"
to = "B:1"
spec = "AS22759/32"
size = "22"
colour = "2"
[[wire]]
id = "105"
from = "S1"
to = "B:2"
spec = "AS22759/32"
size = "22"
[[branch]]
id = "T1"
from = "P1"
to = "J1"
length_mm = 400.0
make = "straight"
  [[branch.layer]]
  of = ["101", "102", "103"]
  [[branch.cover]]
  what = "tape"
  part = "T-1"
  from_mm = 0.0
  to_mm = 300.0
  [[branch.cover]]
  what = "sheath"
  part = "AS23053/16 3.2"
  [[branch.cover]]
  what = "tape"
  part = "T-2"
  from_mm = 50.0
  to_mm = 100.0
[[branch]]
id = "L1"
from = "J1"
to = "A"
length_mm = 200.0
make = "straight"
  [[branch.layer]]
  of = ["101", "102"]
  [[branch.cover]]
  what = "braid"
  part = "B-1"
  from_mm = 40.0
  to_mm = 190.0
[[branch]]
id = "L2"
from = "J1"
to = "B"
length_mm = 100.0
make = "straight"
  [[branch.layer]]
  of = ["104", "105"]
  [[branch.cover]]
  what = "sheath"
  part = "AS23053/16 3.2"
`

func inTheKitchen(t *testing.T, more ...string) *sheet.Sheet {
	t.Helper()
	text := kitchen
	for k := 0; k < len(more); k += 2 {
		if !strings.Contains(text, more[k]) {
			t.Fatalf("there is no %q", more[k])
		}
		text = strings.Replace(text, more[k], more[k+1], 1)
	}
	outlet := catalogue.Outlet{ExpandedMM: 30, RecoveredMM: 1, PortMM: 20}
	cat := catalogue.Merge(calctest.Catalogue(t), &catalogue.Catalogue{Transitions: map[string]catalogue.Transition{
		"own": {ID: "own", Outlets: []catalogue.Outlet{outlet, outlet, outlet}, Origin: catalogue.Origin{Standing: catalogue.House}}}})
	return calc.Build(calctest.Parse(t, text), cat, nil)
}

// stepsOf are the keys of steps; the size of a marker sleeve is left out.
func stepsOf(all []runquery.RunStep) []string {
	var out []string
	for _, r := range all {
		key, _, _ := strings.Cut(r.Key, " marker sleeve")
		out = append(out, key)
	}
	return out
}

// The run of that loom, written down by hand from the rule: cut longest first off each reel, lay from the box outward, join where the
// branches meet, ring out, wind and thread on inside out with the moulded part behind the sheaths of its branches, contacts, ring
// out, trial fit, then shrink covers, the moulded part, the boot, labels; glue packs of four joints, weigh, load. Lengths: 400 + 200
// + loops 16 and 8 + tails 100 and 75 are 799: 800; to the splice 400 + 16 + 175 are 591: 600; beyond it 100 + 8 + 175 are 283: 290.
func TestTheWholeRun(t *testing.T) {
	s := inTheKitchen(t)
	for _, g := range s.Snags {
		if g.Level == sheet.Stop {
			t.Errorf("it stops: %+v", g)
		}
	}
	pull20, pull22 := "AS22759/32 20 in size 20 M39029/58-363", "AS22759/32 22 in size 20 M39029/58-363"
	want := []string{
		"lot AS22759/32 22", "cut AS22759/32 22 800", "cut AS22759/32 22 290", "lot AS22759/32 20", "cut AS22759/32 20 600",
		"lay T1 0", "join S1", "lay L1 0", "lay L2 0", "hold bare",
		"wind tape T1 T-1", "thread sheath T1 AS23053/16 3.2", "thread braid L1 B-1", "thread sheath L2 AS23053/16 3.2",
		"thread transition J1 own", "thread label P1", "thread boot P1 boot-straight-18", "thread label A", "thread label B",
		"pull AS22759/32 22 in size 20", "pull " + pull20, "pull " + pull22, "pin P1", "pin A", "pin B", "hold pinned", "hold fit",
		"shrink sheath T1 AS23053/16 3.2", "wind tape T1 T-2", "shrink sheath L2 AS23053/16 3.2", "shrink transition J1 own",
		"shrink boot P1 boot-straight-18", "shrink label P1", "shrink label A", "shrink label B", "glue 1", "glue 2", "weigh", "hold " +
			"loaded",
	}
	steps := runquery.Run(s)
	if got := stepsOf(steps); !slices.Equal(got, want) {
		t.Errorf("the run is\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
	joints := map[string][]string{}
	for _, r := range steps {
		if r.Kind == runquery.GlueStep {
			joints[r.Key+" "+r.Of] = r.Joints
		}
	}
	if fmt.Sprint(joints) != "map[glue 1 mix 1:[J1 T1, L1, L2] glue 2 mix 2:[P1 lip, cable]]" {
		t.Errorf("%v", joints)
	}
	for packs, want := range map[int]string{2: "[J1 T1, L1] [J1 L2] [P1 lip, cable]", 3: "[J1 T1, L1, L2] [P1 lip, cable]",
		5: "[J1 T1, L1, L2 P1 lip, cable]", 1: "[J1 T1] [J1 L1] [J1 L2] [P1 lip] [P1 cable]"} {
		var got []string
		for _, m := range threading.Mixes(inTheKitchen(t, "[rules]\n", fmt.Sprintf("[rules]\npack_joints = %d\n", packs))) {
			got = append(got, fmt.Sprint(m.Joints))
		}
		if strings.Join(got, " ") != want {
			t.Errorf("packs of %d: %v, want %s", packs, got, want)
		}
	}
	if got := threading.Mixes(inTheKitchen(t, "adhesive = \"epoxy\"\n", "")); got != nil {
		t.Errorf("without an adhesive: %v", got)
	}
	// A serial that was begun before runs asked for lots and samples is not asked for them, nor weighed.
	for _, key := range stepsOf(runquery.For(s, &model.Build{})) {
		if verb, _ := built.Work(key); verb == "lot" || verb == "pull" || verb == "weigh" {
			t.Errorf("it is asked for %s", key)
		}
	}
	if got := len(runquery.For(s, &model.Build{EachTest: model.Some(true)})); got != len(want) {
		t.Errorf("%d steps, want %d", got, len(want))
	}
}

// What each step of that loom goes over, by hand: the tape beneath the sheath lies on the bare layer, the tape over it on both and
// on the shrunk sheath; contacts go on when all that comes over their tails is on; a mix when its parts are shrunk.
func TestWhatEachStepGoesOver(t *testing.T) {
	s := inTheKitchen(t)
	on := map[string][]string{}
	what := map[string]model.What{}
	for _, f := range built.Facts(s) {
		on[f.Key], what[f.Key] = f.On, f.What
	}
	const sheath = "sheath T1 AS23053/16 3.2"
	for key, want := range map[string]string{
		"lay T1 0":         "cut 101; cut 102; cut 103",
		"wind tape T1 T-1": "lay T1 0",
		"thread " + sheath: "lay T1 0; wind tape T1 T-1",
		"shrink " + sheath: "thread " + sheath + "; wind tape T1 T-1",
		"wind tape T1 T-2": "lay T1 0; wind tape T1 T-1; thread " + sheath + "; wind tape T1 T-1; shrink " + sheath,
		"join S1":          "cut 103; cut 104; cut 105",
		"glue 1":           "shrink transition J1 own",
	} {
		got := strings.Join(on[key], "; ")
		if strings.HasPrefix(key, "lay ") { // members lie in their order round the layer
			got = strings.Join(slices.Sorted(slices.Values(on[key])), "; ")
		}
		if got != want {
			t.Errorf("%s goes over %s, want %s", key, got, want)
		}
	}
	if w := what["wind tape T1 T-2"]; w.Part.V != "T-2" || w.FromMM.V != 50 || w.ToMM.V != 100 || w.MM.Set ||
		!slices.Equal(w.Path, []string{"T1"}) || w.PathMM[0] != 400 {
		t.Errorf("%+v", w)
	}
	if w := what["pin A"]; fmt.Sprint(w.Ends) != "[1 101 2 102]" {
		t.Errorf("%+v", w)
	}
	if w := what["glue 2"]; fmt.Sprint(w.Members) != "[P1 lip, cable]" {
		t.Errorf("%+v", w)
	}
}

// The bill of that loom by hand. Wire: 22 AWG brown 0.8 m, red 0.8 + 0.29, without a colour 0.29; 20 AWG red 0.6; ordered with 10 %
// and 3 samples of 150 mm for each crimp of the size, on the colour with most: 22 AWG in size 20 of the box and of A, 6 samples,
// 0.9 m; 20 AWG 3, 0.45. Ties: three branches at the breakout and two at the splice, of 300 mm. The tubes by their cut lengths.
func TestTheBillOfIt(t *testing.T) {
	s := inTheKitchen(t)
	rows := map[string]lists.BillRow{}
	var order []string
	for _, r := range lists.Bill(s) {
		part := r.Part
		if r.Group == "label" {
			part = ""
		}
		key := strings.TrimSpace(r.Group + " " + part + " " + r.Colour)
		rows[key], order = r, append(order, key)
	}
	for _, c := range []struct {
		key         string
		need, order float64
		metres      bool
		says, open  string
	}{
		{"wire AS22759/32 22", 0.3, 0.4, true, "", "its colour is not given"},
		{"wire AS22759/32 22 1", 0.8, 0.9, true, "", ""},
		{"wire AS22759/32 22 2", 1.1, 2.1, true, "with 6 sample crimps", ""}, // 1.09 × 1.1 + 0.9 = 2.099
		{"wire AS22759/32 20 2", 0.6, 1.2, true, "with 3 sample crimps", ""}, // 0.66 + 0.45 = 1.11
		{"splice AS81824/1-1", 1, 4, false, "and samples to pull", ""},       // 20 AWG with two of 22, 1,508 circular mils: reference, ends
		{"tape T-1", 0.2, 0.2, true, "",
			""}, // 300 mm edge to edge, 19 wide, on 2.49 mm: 15.8 turns of 8.1 mm are 0.13 m
		{"tape T-2", 0.1, 0.1, true, "", ""},
		{"braid B-1", 0.2, 0.2, true, "", ""},
		{"boot boot-straight-18", 1, 1, false, "", ""},
		{"transition own", 1, 1, false, "", ""},
		{"connector 18-32", 1, 1, false, "pin, key N, inline", ""},
		{"connector A, 2 ways", 1, 1, false, "A", "no part is given for it"},
		{"ring terminal ring M6", 2, 2, false, "for 22 AWG", ""},
		{"wire flag printed", 10, 10, false, "one at each end of every wire; remove it when the contact is in", ""},
		{"lacing tape or thread", 1.5, 1.7, true, "5 ties of 300 mm", ""},
		{"adhesive epoxy", 2, 2, false, "packs of 4 joints", ""},
	} {
		r, has := rows[c.key]
		if !has || r.Need != c.need || r.Order != c.order || r.Metres != c.metres || r.Says != c.says && c.says != "" || r.Open != c.open {
			t.Errorf("%s: %+v, want %v and %v, %q, %q", c.key, r, c.need, c.order, c.says, c.open)
		}
	}
	// What cannot be ordered yet stands first.
	open := true
	for _, key := range order {
		if open = open && rows[key].Open != ""; !open && rows[key].Open != "" {
			t.Errorf("%s stands behind what can be ordered", key)
		}
	}
	// With a number of the shop's own it can be ordered, in whole packs: 1.5 m of lacing with 10 % are 1.7, four packs of half a metre.
	s.Cat = catalogue.Merge(s.Cat, &catalogue.Catalogue{Stock: []catalogue.Stock{{What: "splice", Of: "AS81824/1-1", Number: "N-1"},
		{What: "lacing", Of: "tape or thread", Number: "N-2", Pack: 0.5}}})
	for _, r := range lists.Bill(s) {
		switch r.Group {
		case "splice":
			if r.Open != "" || r.Stock.Number != "N-1" || r.Packs != 0 {
				t.Errorf("%+v", r)
			}
		case "lacing":
			if r.Packs != 4 || r.Stock.Number != "N-2" {
				t.Errorf("%+v", r)
			}
		}
	}
}

// What is threaded on, with what it must pass and how long it is cut, and the pieces of each step of the run.
func TestPiecesOfTheWholeRun(t *testing.T) {
	s := inTheKitchen(t)
	pieces := map[string]string{}
	for _, r := range runquery.Run(s) {
		for _, p := range runquery.Pieces(s, r) {
			pieces[r.Key] += p.Key + "=" + p.ID + " "
		}
	}
	for key, want := range map[string]string{
		"cut AS22759/32 22 800": "cut 101=101 cut 102=102 ",
		"lay L1 0":              "101=101 102=102 ",
		"pin B":                 "1=104 2=105 ",
		"glue 1":                "",
		"weigh":                 "",
		"hold bare":             "P1:A A:1=101 P1:B A:2=102 P1:C B:1=103 P1:C B:2=103 ",
		"pull AS22759/32 22 in size 20": "AS22759/32 22 in size 20, sample 1= AS22759/32 22 in size 20, sample 2= " +
			"AS22759/32 22 in size 20, sample 3= ",
	} {
		if pieces[key] != want {
			t.Errorf("%s: %q, want %q", key, pieces[key], want)
		}
	}
	filled := *s
	filled.Branches = slices.Clone(s.Branches)
	filled.Branches[2].Layers = []sheet.Layer{{Members: []sheet.Member{{ID: "filler", Kind: sheet.OfFiller}, {ID: "104"},
		{ID: "filler", Kind: sheet.OfFiller}}}}
	got := ""
	for _, p := range runquery.Pieces(&filled, runquery.RunStep{Kind: runquery.LayStep, Of: "L2"}) {
		got += p.Key + "=" + p.ID + " "
	}
	if got != "filler 1=filler 104=104 filler 2=filler " {
		t.Errorf("fillers: %q", got)
	}
	for _, bad := range []runquery.RunStep{{Kind: runquery.LayStep, Of: "X"}, {Kind: runquery.LayStep, Of: "T1", Layer: 1},
		{Kind: runquery.PinStep, Of: "X"}} {
		if got := runquery.Pieces(s, bad); got != nil {
			t.Errorf("%+v has %v", bad, got)
		}
	}
	var tubes []string
	for _, r := range lists.Tubes(s) {
		tubes = append(tubes, fmt.Sprintf("%s %s %s %g-%g", r.Branch, r.What, r.Part, float64(r.FromMM), float64(r.ToMM)))
	}
	if !slices.Contains(tubes, "L1 braid B-1 40-190") || len(tubes) != 3 || strings.Contains(strings.Join(tubes, " "), "tape") {
		t.Errorf("%v", tubes)
	}
}

// One wire that rings to nothing, one that rings: what each test must read, by hand. Copper of 22 AWG is 53.15 ohm a km: over 624 mm
// with its loops 0.0332 ohm; a hand meter has 0.3 of leads and 0.1 of its last digit: 0.4332, up to the tenth 0.5.
func TestTestsOfTheWholeRun(t *testing.T) {
	s := inTheKitchen(t, "to = \"A:2\"", "to = \"\"")
	var bare []runquery.Check
	for _, r := range runquery.Run(s) {
		if r.Key == runquery.HoldBare {
			bare = runquery.Tests(s, r)
		}
	}
	if len(bare) != 4 {
		t.Fatalf("%+v", bare)
	}
	calctest.Near(t, "copper of 101", bare[0].Expect, 0.0332, 0.0001)
	if c := bare[0]; c.Kind != runquery.Rings || c.From != "P1:A" || c.To != "A:1" || !slices.Equal(c.Via, []string{"101"}) ||
		c.Limit != 0.5 {
		t.Errorf("%+v", c)
	}
	if c := bare[1]; c.Kind != runquery.Silent || c.Name != "P1:B" || c.From != "P1:B" || c.To != "" || c.Limit != 0 || c.Unit() != "" {
		t.Errorf("%+v", c)
	}
	if c := bare[3]; c.Name != "P1:C B:2" || !slices.Equal(c.Via, []string{"103", "105"}) {
		t.Errorf("%+v", c)
	}
	var over unit.Millimetre
	for _, th := range threading.Threading(s) {
		over = max(over, th.PassMM)
	}
	if over <= 0 {
		t.Error("nothing is passed")
	}
}
