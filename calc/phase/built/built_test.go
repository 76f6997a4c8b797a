package built_test

import (
	"fmt"
	"maps"
	"reflect"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/phase/built"
	"contralay/calc/query/run"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/file"
	"contralay/model/unit"
)

// loom is a trunk with two legs, a pair, and a splice at the breakout; everything is laid.
const loom = `format = 1

[harness]
number   = "REC-1"
revision = "C"

[[termination]]
id       = "P1"
cavities = ["1", "2", "3", "4", "5", "6"]

[[termination]]
id       = "INJ"
cavities = ["1", "2", "3"]

[[termination]]
id       = "SEN"
cavities = ["1", "2", "3", "4"]

[[breakout]]
id = "J1"

[[splice]]
id   = "S1"
at   = "J1"
part = "stub-3"
%s
[[unit]]
id    = "C1"
wires = ["104", "105"]
build = "pair"

[[branch]]
id        = "T1"
from      = "P1"
to        = "J1"
length_mm = 400.0
make      = "laid"

  [[branch.layer]]
  of = ["C1"]
  bind_mm = 0.2

  [[branch.layer]]
  of = ["101", "102", "103", "106"]
  fillers = 3
  filler_mm = 1.1

  [[branch.cover]]
  what = "sheath"
  part = "AS23053/16 6.4"

[[branch]]
id        = "L1"
from      = "J1"
to        = "INJ"
length_mm = 120.0
make      = "twisted"

  [[branch.layer]]
  of = ["101", "102", "107"]

[[branch]]
id        = "L2"
from      = "J1"
to        = "SEN"
length_mm = 200.0
make      = "twisted"

  [[branch.layer]]
  of = ["C1", "103", "108"]
`

func text() string {
	var b strings.Builder
	for _, w := range [][5]string{{"101", "P1:1", "INJ:1", "22", "1"}, {"102", "P1:2", "INJ:2", "22", "2"},
		{"103", "P1:3", "SEN:1", "20", "3"},
		{"104", "P1:4", "SEN:2", "22", "4"}, {"105", "P1:5", "SEN:3", "22", "5"}, {"106", "P1:6", "S1", "20", "6"},
		{"107", "S1", "INJ:3", "22", "7"}, {"108", "S1", "SEN:4", "22", "8"}} {
		fmt.Fprintf(&b, "[[wire]]\nid = %q\nfrom = %q\nto = %q\nspec = \"AS22759/32\"\nsize = %q\ncolour = %q\n\n", w[0], w[1], w[2], w[3],
			w[4])
	}
	return fmt.Sprintf(loom, b.String())
}

// ticked is a harness with every step of its run ticked under serial 1.
func ticked(s *sheet.Sheet) *model.Harness {
	return s.H.EditBuild("1", func(b *model.Build) {
		b.Revision, b.GoesBy = s.H.Head.Revision, built.GoesBy(s)
		for _, f := range built.Facts(s) {
			b.Tick(model.Ticked{Key: f.Key, What: model.Some(f.What)})
		}
	})
}

// Nothing differs from what was built a moment ago, nor once it was saved and loaded; nothing is
// said of it. Every step of the run has its record, and every record its step.
func TestBuiltIsAsTheSheet(t *testing.T) {
	for _, name := range calctest.Files("demo", "whole", "feeds", "example", "") {
		var s *sheet.Sheet
		if name == "" {
			s = calctest.Built(t, text())
		} else {
			s = calctest.Laid(t, name)
			s = calc.Build(run.Written(s), s.Base, s)
		}
		s = calc.Build(ticked(s), s.Base, s)
		d := file.Document{Harness: *s.H}
		back, err := file.Parse(file.Encode(d), "back.toml")
		if err != nil {
			t.Fatal(err)
		}
		if string(file.Encode(back)) != string(file.Encode(d)) {
			t.Errorf("%s: saved, loaded and saved it is another file", name)
		}
		for _, h := range []*model.Harness{s.H, &back.Harness} {
			n := calc.Build(h, s.Base, nil)
			if c := built.Since(n, &h.Builds[0]); len(c.Differences) > 0 || c.Again > 0 || c.Unknown > 0 {
				t.Errorf("%s: %+v", name, c)
			}
			if g, said := calctest.Snag(n, "built.since", ""); said {
				t.Errorf("%s: %s", name, g.Says)
			}
		}
		var marks, keys []string
		batch := map[string]string{}
		for _, r := range run.For(s, &model.Build{EachTest: model.Some(true)}) {
			if r.Kind == run.LotStep || r.Kind == run.PullStep { // they make nothing
				continue
			}
			for _, m := range r.Marks() {
				marks, batch[m] = append(marks, m), r.Key
			}
		}
		for _, f := range built.Facts(s) {
			keys = append(keys, f.Key)
			if batch[f.Key] != f.Step {
				t.Errorf("%s: %s is ticked with %q, its record says %q", name, f.Key, batch[f.Key], f.Step)
			}
		}
		slices.Sort(marks)
		slices.Sort(keys)
		if !slices.Equal(marks, keys) {
			t.Errorf("%s: steps %q\nrecords %q", name, marks, keys)
		}
	}
}

// An edit is made after everything was built: what is said of it, and what has to be done again,
// both worked out by hand. A wire that is replaced opens its layers and those round them, its
// splice, both its ends and all that lies over them, and is rung out again.
type edit struct {
	name  string
	h     func(h *model.Harness) *model.Harness
	says  []string
	again string // steps by key, in any order; none, none of them a hold
	holds string // bare, fit, pinned, loaded
}

const allHolds = "bare fit pinned loaded"

// What lies over the trunk and over each leg, and what is threaded on before contacts.
const (
	overT1 = "thread sheath T1 AS23053/16 6.4; shrink sheath T1 AS23053/16 6.4; thread label P1 marker sleeve 9.5; " +
		"shrink label P1 marker sleeve 9.5; pin P1"
	overL1 = "thread sheath L1 AS23053/16 3.2; shrink sheath L1 AS23053/16 3.2; thread label INJ marker sleeve 4.8; " +
		"shrink label INJ marker sleeve 4.8; pin INJ"
	overL2 = "thread sheath L2 AS23053/16 4.8; shrink sheath L2 AS23053/16 4.8; thread label SEN marker sleeve 6.4; " +
		"shrink label SEN marker sleeve 6.4; pin SEN"
)

func wire(i int, f func(w *model.Wire)) func(h *model.Harness) *model.Harness {
	return func(h *model.Harness) *model.Harness { return h.EditWire(i, f) }
}

func branch(i int, f func(b *model.Branch)) func(h *model.Harness) *model.Harness {
	return func(h *model.Harness) *model.Harness { return h.EditBranch(i, f) }
}

var edits = []edit{
	{"a note and a current", wire(0, func(w *model.Wire) { w.Note, w.Amps = model.Some("x"), model.Some(unit.Ampere(1)) }), nil, "", ""},
	{"size and colour of a wire", wire(0, func(w *model.Wire) { w.Size, w.Colour = "20", model.Some("4") }),
		[]string{"wire 101 is 20 AWG yellow, was 22 AWG brown, 720 mm"},
		"cut 101; lay T1 1; lay L1 0; " + overT1 + "; " + overL1, allHolds},
	{"a size that makes every layer round it larger: one cause", wire(0, func(w *model.Wire) { w.Size = "14" }),
		[]string{"wire 101 is 14 AWG brown, was 22 AWG brown, 720 mm"},
		"cut 101; lay T1 1; lay L1 0; " + overT1 + "; " + overL1, allHolds},
	{"colour of a wire of the pair", wire(3, func(w *model.Wire) { w.Colour = model.Some("WHRD") }),
		[]string{"wire 104 is 22 AWG WHRD, was 22 AWG yellow, 900 mm"},
		"cut 104; make C1; lay T1 0; build up T1; lay T1 1; lay L2 0; " + overT1 + "; " + overL2, allHolds},
	{"specification of a wire", wire(6, func(w *model.Wire) { w.Spec = "AS22759/16" }),
		[]string{"wire 107 is AS22759/16 22 AWG violet, was AS22759/32 22 AWG violet, 310 mm"},
		"cut 107; join S1; lay L1 0; " + overL1, allHolds},
	{"a leg longer", branch(1, func(b *model.Branch) { b.LengthMM = 220 }), []string{"L1 is 100 mm longer"},
		"cut 101; cut 102; cut 107; lay T1 1; lay L1 0; join S1; " + overT1 + "; " + overL1, allHolds},
	{"a leg shorter", branch(2, func(b *model.Branch) { b.LengthMM = 170 }), []string{"L2 is 30 mm shorter"},
		"cut 103; cut 104; cut 105; cut 108; make C1; lay T1 0; build up T1; lay T1 1; lay L2 0; join S1; " + overT1 + "; " + overL2,
		allHolds},
	{"a leg 4 mm longer: no hand works closer", branch(2, func(b *model.Branch) { b.LengthMM = 204 }), nil, "", ""},
	{"a wire from one layer into another", branch(0, func(b *model.Branch) {
		b.Layers[0].Of, b.Layers[1].Of = []string{"C1", "103"}, []string{"101", "102", "106"}
	}), []string{"T1 centre has 103 too", "T1 layer 1 no longer has 103"}, "lay T1 0; build up T1; lay T1 1; " + overT1, allHolds},
	{"more tape round the centre", branch(0, func(b *model.Branch) { b.Layers[0].BindMM = model.Some[unit.Millimetre](0.6) }),
		[]string{"T1 centre tape wound on is 0.60 mm, was 0.20 mm"}, "build up T1; lay T1 1; " + overT1, allHolds},
	{"one filler less", branch(0, func(b *model.Branch) { b.Layers[1].Fillers = model.Some(2) }),
		[]string{"T1 layer 1 number of fillers is 2, was 3"}, "lay T1 1; " + overT1, allHolds},
	{"another filler", branch(0, func(b *model.Branch) { b.Layers[1].FillerMM = model.Some[unit.Millimetre](1.2) }),
		[]string{"T1 layer 1 filler diameter is 1.20 mm, was 1.10 mm"}, "lay T1 1; " + overT1, allHolds},
	{"a longer lay", branch(0, func(b *model.Branch) { b.Layers[1].LayMM = model.Some[unit.Millimetre](80) }),
		[]string{"T1 layer 1 lay is 80 mm, was 59 mm"}, "lay T1 1; " + overT1, allHolds},
	{"the other hand", branch(0, func(b *model.Branch) { b.Outer = model.Some(model.HandRight) }),
		[]string{"T1 layer 1 hand is RH, was LH"}, "lay T1 1; " + overT1, allHolds},
	{"another splice", func(h *model.Harness) *model.Harness {
		return h.EditSplice(0, func(s *model.Splice) { s.Part = model.Some("AS81824/1-3") })
	}, []string{"splice S1 is AS81824/1-3, was stub-3"}, "join S1", allHolds},
	{"two wires change cavities", func(h *model.Harness) *model.Harness {
		h = h.EditWire(1, func(w *model.Wire) { w.From = model.Some("P1:3") })
		return h.EditWire(2, func(w *model.Wire) { w.From = model.Some("P1:2") })
	}, []string{"P1 cavity 2 takes 103, took 102 and cavity 3 takes 102, took 103"}, "pin P1", "fit pinned loaded"},
	{"another sheath", branch(0, func(b *model.Branch) { b.Covers[0].Part = model.Some("AS23053/16 9.5") }),
		[]string{"sheath of T1 is AS23053/16 9.5, was AS23053/16 6.4"}, overT1, "fit pinned loaded"},
	{"a wire gone", func(h *model.Harness) *model.Harness {
		h, err := h.RemoveWire(7)
		if err != nil {
			panic(err)
		}
		return h
	}, []string{"wire 108 is no longer in the sheet: 22 AWG grey, 390 mm was cut"}, "cut 108; lay L2 0; join S1; " + overL2, allHolds},
	{"a wire more", func(h *model.Harness) *model.Harness {
		h = h.EditTermination(1, func(t *model.Termination) { t.Cavities = append(slices.Clone(t.Cavities), "4") })
		h = h.AddWire(model.Wire{ID: "109", From: model.Some("S1"), To: model.Some("INJ:4"), Spec: "AS22759/32", Size: "22"}, nil)
		return h.EditBranch(1, func(b *model.Branch) { b.Layers[0].Of = append(slices.Clone(b.Layers[0].Of), "109") })
	}, []string{"wire 109 is new"}, "lay L1 0; join S1; " + overL1, allHolds},
	{"the revision", func(h *model.Harness) *model.Harness {
		n := *h
		n.Head.Revision = model.Some("D")
		return &n
	}, []string{"the sheet is revision D, was C"}, "", ""},
}

func keysOf(e edit) []string {
	var out []string
	for _, key := range strings.Split(e.again, "; ") {
		if key != "" {
			out = append(out, key)
		}
	}
	for _, h := range strings.Fields(e.holds) {
		out = append(out, "hold "+h)
	}
	if len(out) > 0 {
		out = append(out, "weigh") // whatever is done again is in the mass
	}
	slices.Sort(out)
	return out
}

func again(c built.Comparison) []string {
	var out []string
	for _, d := range c.Differences {
		for _, key := range d.Again {
			if !slices.Contains(out, key) {
				out = append(out, key)
			}
		}
	}
	slices.Sort(out)
	return out
}

// After each edit the sheet says what differs and what has to be done again, once, and that and
// nothing else. Kept with a name it is asked for no more, until the sheet changes again; done
// again, it is open again and stays on record with its reason.
func TestSinceItWasBuilt(t *testing.T) {
	s := calctest.Built(t, text())
	s = calc.Build(ticked(calc.Build(run.Written(s), s.Base, nil)), s.Base, nil)
	for _, e := range edits {
		t.Run(e.name, func(t *testing.T) {
			h := e.h(s.H)
			n := calc.Build(h, s.Base, s)
			c := built.Since(n, &h.Builds[0])
			var says []string
			for _, d := range c.Differences {
				says = append(says, d.Says)
			}
			if !slices.Equal(says, e.says) {
				t.Errorf("it says %q\nit should say %q", says, e.says)
			}
			if got, want := again(c), keysOf(e); !slices.Equal(got, want) {
				more, less := apart(got, want)
				t.Errorf("to do again, too many: %q\ntoo few: %q", more, less)
			}
			if e.name == "the revision" { // what is finished stays as it is; what is not is asked for
				if g, said := calctest.Snag(n, "built.since", ""); said {
					t.Errorf("a finished build: %+v", g)
				}
				half := h.EditBuild("1", func(b *model.Build) { b.Undo("hold loaded", "") })
				n = calc.Build(half, s.Base, n)
			}
			g, said := calctest.Snag(n, "built.since", "serial 1")
			if said != (len(e.says) > 0) || said && (!strings.Contains(g.Says, e.says[0]) || len(calctest.SaidOf(n, "built.since")) != 1) {
				t.Errorf("the open point: %v %+v", said, g)
			}
			if said && (g.Level == sheet.Note) != (len(keysOf(e)) == 0 || e.name == "the revision") {
				t.Errorf("its level: %+v", g)
			}
			kept := h.EditBuild("1", func(b *model.Build) {
				for _, d := range c.Differences {
					d.Keep(b, "14", "2026-05-12 08:10")
				}
			})
			k := calc.Build(kept, s.Base, n)
			if left := built.Since(k, &kept.Builds[0]); len(left.Differences) > 0 {
				t.Errorf("kept, and still asked: %s", left.Says())
			}
			if b := &kept.Builds[0]; len(b.Apart) != len(e.says) || len(b.Apart) > 0 && (b.Apart[0].By.V != "14" || b.Apart[0].On.V == "") {
				t.Errorf("deviations %+v", b.Apart)
			}
			redo := h.EditBuild("1", func(b *model.Build) {
				for _, d := range c.Differences {
					d.Redo(b)
				}
			})
			if left := built.Since(calc.Build(redo, s.Base, n), &redo.Builds[0]); len(left.Differences) > 0 {
				t.Errorf("to do again, and still asked: %s", left.Says())
			}
			for _, key := range keysOf(e) {
				if redo.Builds[0].Did(key) {
					t.Errorf("%s is to be done again and counts as done", key)
				}
			}
			if got, want := len(redo.Builds[0].Steps), len(h.Builds[0].Steps); got != want {
				t.Errorf("%d steps on record, were %d", got, want)
			}
			struck := kept.EditBuild("1", func(b *model.Build) {
				for len(b.Apart) > 0 {
					built.Strike(b, 0)
				}
			})
			if back := built.Since(n, &struck.Builds[0]); e.name != "the revision" && (back.Says() != c.Says() || back.Again != c.Again) {
				t.Errorf("struck out, it says %s\nand said %s", back.Says(), c.Says())
			}
			if back := built.Since(s, &kept.Builds[0]); e.name != "the revision" && len(back.Differences) > 0 {
				t.Errorf("the sheet as it was built again, and it says: %s", back.Says())
			}
		})
	}
}

func apart(a, b []string) (more, less []string) {
	for _, x := range a {
		if !slices.Contains(b, x) {
			more = append(more, x)
		}
	}
	for _, x := range b {
		if !slices.Contains(a, x) {
			less = append(less, x)
		}
	}
	return more, less
}

// otherwise is what a step made with field number k changed by more than hands can tell apart, in
// every way there is; none of a field that is not set.
func otherwise(t *testing.T, w model.What, k int) []model.What {
	var out []model.What
	put := func(v any) {
		n := w
		reflect.ValueOf(&n).Elem().Field(k).Set(reflect.ValueOf(v))
		out = append(out, n)
	}
	switch f := reflect.ValueOf(w).Field(k).Interface().(type) {
	case model.Opt[string]:
		if f.Set {
			put(model.Some(f.V + "x"))
		}
	case model.Opt[model.Hand]:
		if f.Set {
			put(model.Some(map[model.Hand]model.Hand{model.HandLeft: model.HandRight, model.HandStraight: model.HandLeft}[f.V]))
		}
	case model.Opt[int]:
		if f.Set {
			put(model.Some(f.V + 1))
		}
	case model.Opt[unit.Millimetre]:
		if f.Set {
			put(model.Some(f.V*1.3 + 11))
		}
	case []unit.Millimetre:
		if len(f) > 0 {
			put(append([]unit.Millimetre{f[0] + 20}, f[1:]...))
		}
	case []string:
		if len(f) > 0 {
			put(f[1:])
			put(append(slices.Clone(f), "9 x9"))
		}
	default:
		t.Fatalf("a field of a new kind: %T", f)
	}
	return out
}

// Whatever one field of a record is otherwise, that step and what goes over it is to be done
// again, and nothing else; and it is so from a file that was saved and loaded.
func TestEveryFieldOfARecordCounts(t *testing.T) {
	s := calctest.Built(t, text())
	s = calc.Build(ticked(calc.Build(run.Written(s), s.Base, nil)), s.Base, nil)
	facts := built.Facts(s)
	stands := map[string]map[string]bool{} // by hand: what each step goes over, however deep
	var under func(key string) map[string]bool
	under = func(key string) map[string]bool {
		if stands[key] == nil {
			stands[key] = map[string]bool{}
			for _, f := range facts {
				if f.Key == key {
					for _, on := range f.On {
						stands[key][on] = true
						maps.Copy(stands[key], under(on))
					}
				}
			}
		}
		return stands[key]
	}
	met := map[string]int{}
	for _, f := range facts {
		for k := range reflect.TypeFor[model.What]().NumField() {
			for _, w := range otherwise(t, f.What, k) {
				field := reflect.TypeFor[model.What]().Field(k).Name
				h := s.H.EditBuild("1", func(b *model.Build) { b.TickOf(f.Key).What = model.Some(w) })
				d, err := file.Parse(file.Encode(file.Document{Harness: *h}), "x.toml")
				if err != nil {
					t.Fatal(err)
				}
				c := built.Since(s, &d.Harness.Builds[0])
				met[field]++
				// The way of a wire is kept to name the branch that made it longer.
				if f.Kind == built.Cut && field == "PathMM" || field == "Path" {
					if len(c.Differences) > 0 {
						t.Errorf("%s, %s: %s", f.Key, field, c.Says())
					}
					continue
				}
				if len(c.Differences) != 1 || !slices.Equal(c.Differences[0].Steps, []string{f.Key}) {
					t.Errorf("%s, %s: %+v", f.Key, field, c)
				}
				var want []string
				for _, o := range facts {
					if o.Key == f.Key || under(o.Key)[f.Key] {
						want = append(want, o.Key)
					}
				}
				slices.Sort(want)
				if got := again(c); !slices.Equal(got, want) {
					more, less := apart(got, want)
					t.Errorf("%s, %s: too many %q, too few %q", f.Key, field, more, less)
				}
			}
		}
	}
	for k := range reflect.TypeFor[model.What]().NumField() {
		if f := reflect.TypeFor[model.What]().Field(k).Name; met[f] == 0 {
			t.Errorf("no %s was otherwise: the test shows nothing of it", f)
		}
	}
}

// A file of before the record has steps by key alone: they are compared by the revision, which is
// said once while it is the same; with another one all of them come up.
func TestStepsByKeyAlone(t *testing.T) {
	s := calctest.Built(t, text())
	h := s.H.EditBuild("003", func(b *model.Build) {
		b.Revision, b.Done = model.Some("C"), []string{"cut 101", "cut 102", "lay T1 0", "cut 999"}
		b.Tick(model.Ticked{Key: "cut 103"}) // a record that does not hold what was done either
		b.Steps = append(b.Steps, model.Ticked{Key: "cut 101"})
	})
	n := calc.Build(h, s.Base, s)
	g, said := calctest.Snag(n, "built.unknown", "serial 003")
	if !said || g.Level != sheet.Note || !strings.Contains(g.Says, "Of 5 steps") || len(calctest.SaidOf(n, "built.since")) > 0 {
		t.Errorf("%v %+v", said, g)
	}
	wire := h.EditWire(0, func(w *model.Wire) { w.Size = "20" })
	if c := built.Since(calc.Build(wire, s.Base, n), &wire.Builds[0]); len(c.Differences) > 0 {
		t.Errorf("what was cut is not known, and it says %s", c.Says())
	}
	raised := *h
	raised.Head.Revision = model.Some("D")
	n = calc.Build(&raised, s.Base, n)
	c := built.Since(n, &raised.Builds[0])
	if len(c.Differences) != 1 || c.Again != 4 || !strings.Contains(c.Says(), "revision D, was C; of 5 steps") {
		t.Errorf("%+v", c)
	}
	redo := raised.EditBuild("003", func(b *model.Build) { c.Differences[0].Redo(b) })
	if b := &redo.Builds[0]; len(b.Keys()) > 0 || b.Revision.V != "D" || len(b.Steps) != 5 {
		t.Errorf("%+v", b)
	}
	kept := raised.EditBuild("003", func(b *model.Build) { c.Differences[0].Keep(b, "14", "") })
	if b := &kept.Builds[0]; len(b.Keys()) != 5 || b.Revision.V != "D" || len(b.Apart) != 1 || b.Apart[0].At != "revision" {
		t.Errorf("%+v", b)
	}
}

// A build that was finished at another revision stays as it is: it is noted and no more, for
// however many serials, in one line.
func TestFinishedBuilds(t *testing.T) {
	s := calctest.Built(t, text())
	h := ticked(s)
	h = h.EditBuild("2", func(b *model.Build) { *b = h.Builds[0]; b.Serial = "2" })
	h = h.EditWire(0, func(w *model.Wire) { w.Size = "20" })
	n := calc.Build(h, s.Base, nil)
	if g, _ := calctest.Snag(n, "built.since", "serial 2"); g.Level != sheet.Warn {
		t.Errorf("changed under the same revision: %+v", g)
	}
	raised := *h
	raised.Head.Revision = model.Some("D")
	var lines []sheet.Group
	for _, g := range sheet.Grouped(calc.Build(&raised, s.Base, nil).Snags) {
		if g.Rule == "built.since" {
			lines = append(lines, g)
		}
	}
	if len(lines) != 1 || lines[0].Level != sheet.Note || lines[0].Count != 2 ||
		!strings.Contains(lines[0].Says, "finished at revision C") {
		t.Errorf("%+v", lines)
	}
}

// Steps that make nothing have nothing to hold: a record of a whole run is known in full, and nothing is said of it.
func TestStepsThatMakeNothing(t *testing.T) {
	s := calctest.Built(t, text())
	h := ticked(s).EditBuild("1", func(b *model.Build) {
		b.EachTest = model.Some(true)
		for _, r := range run.For(s, &model.Build{EachTest: model.Some(true)}) {
			for _, mark := range r.Marks() {
				if !b.Did(mark) {
					b.Tick(model.Ticked{Key: mark, By: model.Some("7")})
				}
			}
		}
	})
	n := calc.Build(h, s.Base, nil)
	if c := built.Since(n, &h.Builds[0]); c.Unknown > 0 || len(c.Differences) > 0 {
		t.Errorf("%d unknown: %s", c.Unknown, c.Says())
	}
	if g, said := calctest.Snag(n, "built.unknown", ""); said {
		t.Error(g.Says)
	}
}

// What the shop has learned since changes nothing of a serial that is begun: nothing is asked of it, and
// what was measured of it is held against the figures it was begun with.
func TestLearnedSince(t *testing.T) {
	s := calctest.Built(t, text())
	read := s.Branches[0].Layers[1].OverMM
	h := ticked(s).EditBuild("1", func(b *model.Build) {
		b.Readings = []model.Reading{{Branch: s.H.Branches[0].ID, Layer: 1, OverMM: []unit.Millimetre{read}}}
	})
	begun := h.EditBuild("1", func(b *model.Build) { b.GoesBy = nil }) // what it was begun with is not known
	n := calctest.Corrected(s, catalogue.Correction{Of: "over, 2 layers", Bias: 0.15})
	now := calc.Build(h, n, nil)
	if c := built.Since(now, &h.Builds[0]); len(c.Differences) > 0 {
		t.Errorf("%s", c.Says())
	}
	if g, said := calctest.Snag(now, "built.over", ""); said {
		t.Errorf("it was as the sheet it was begun with: %s", g.Says)
	}
	if _, said := calctest.Snag(calc.Build(begun, n, nil), "built.over", ""); !said {
		t.Error("by the figures of today it is 15 % off, and nothing says so")
	}
	if got := built.GoesBy(now); !slices.Equal(got, []string{"over, 2 layers: +15.0 %"}) {
		t.Errorf("begun today it goes by %q", got)
	}
}

// A measured reel moves every diameter and many a length a little: nothing is to be done again.
func TestMeasuredReelUndoesNothing(t *testing.T) {
	s := calctest.Laid(t, "demo")
	s = calc.Build(run.Written(s), s.Base, s)
	h := ticked(s).SetReel("AS22759/32", "22", 1.13)
	n := calc.Build(h, s.Base, nil)
	if n.Branches[0].OverMM == s.Branches[0].OverMM {
		t.Fatal("no diameter moved: the test shows nothing")
	}
	if c := built.Since(n, &h.Builds[0]); len(c.Differences) > 0 {
		t.Errorf("%s", c.Says())
	}
}

// A splice that lies inside a run is under the layer that covers it: another splice opens that
// layer and what lies over it, and no other branch.
func TestSpliceUnderItsLayer(t *testing.T) {
	inside := strings.Replace(text(), "part = \"stub-3\"\n", "part = \"stub-3\"\ntoward = \"T1\"\noffset_mm = 150.0\n", 1)
	s := calctest.Built(t, inside)
	s = calc.Build(ticked(calc.Build(run.Written(s), s.Base, nil)), s.Base, nil)
	h := s.H.EditSplice(0, func(s *model.Splice) { s.Part = model.Some("AS81824/1-3") })
	c := built.Since(calc.Build(h, s.Base, s), &h.Builds[0])
	got := again(c)
	for _, want := range []string{"join S1", "lay T1 1", "pin P1", "hold bare"} {
		if !slices.Contains(got, want) {
			t.Errorf("%s is not to be done again: %q", want, got)
		}
	}
	for _, not := range []string{"lay T1 0", "lay L1 0", "lay L2 0", "pin INJ", "cut 106"} {
		if slices.Contains(got, not) {
			t.Errorf("%s is to be done again: %q", not, got)
		}
	}
}

// A stop that comes after its hold was signed is signed for again; one that goes, or says it with
// other figures, is not.
func TestStopThatNobodySigned(t *testing.T) {
	s := calctest.Built(t, strings.Replace(text(), `"AS23053/16 6.4"`, `"AS23053/16 9.5"`, 1)) // it stays loose
	s = calc.Build(ticked(calc.Build(run.Written(s), s.Base, nil)), s.Base, nil)
	if tick := s.H.Builds[0].TickOf("hold stops"); tick == nil || len(tick.What.V.Members) != 1 {
		t.Fatalf("the test has no stop: %+v", tick)
	}
	h := s.H.EditWire(1, func(w *model.Wire) { w.To = model.Some("INJ:9") })
	c := built.Since(calc.Build(h, s.Base, s), &h.Builds[0])
	if len(c.Differences) == 0 || !strings.HasPrefix(c.Differences[len(c.Differences)-1].Says,
		"the sheet has a stop that nobody has signed for: 102: ") || !slices.Contains(again(c), "hold stops") {
		t.Errorf("%+v", c)
	}
	h = s.H.EditBranch(0, func(b *model.Branch) { b.Covers[0].Part = model.Some("AS23053/16 6.4") })
	if c := built.Since(calc.Build(h, s.Base, s), &h.Builds[0]); slices.Contains(again(c), "hold stops") {
		t.Errorf("a stop that is gone: %+v", c)
	}
}

// Whatever was done and is in the sheet no more is said in words, and belongs to its wire, layer or
// part; kept with a name it is asked for no more.
func TestWhatIsGone(t *testing.T) {
	s := calctest.Built(t, text())
	members, mm := []string{"301", "302"}, model.Some[unit.Millimetre](1.89)
	for _, c := range []struct {
		key, at, says string
		what          model.What
	}{
		{"make U9", "U9", "unit U9 is no longer in the sheet: it was made of 301 302", model.What{Members: members}},
		{"lay T1 7", "T1 layer 7", "T1 layer 7 is no longer in the sheet: it was laid with 301 302", model.What{Members: members}},
		{"lay X9 0", "X9 centre", "X9 centre is no longer in the sheet: it was laid with 301 302", model.What{Members: members}},
		{"build up L1", "L1 centre", "L1 centre is no longer built up: 1.89 mm of tape was wound on", model.What{BindMM: mm}},
		{"join S9", "S9", "splice S9 is no longer in the sheet: stub-1 joined 301 302",
			model.What{Members: members, Part: model.Some("stub-1")}},
		{"pin X9", "X9", "X9 is no longer in the sheet: its contacts are on", model.What{Ends: []string{"1 301"}}},
		{"glue 9", "9", "mix 9 of adhesive is no longer in the sheet", model.What{Members: []string{"X9 lip"}}},
		{"wind tape X9 T-1", "tape X9 T-1", "tape X9 T-1 is no longer in the sheet: it was put on", model.What{Part: model.Some("T-1")}},
	} {
		h := s.H.EditBuild("1", func(b *model.Build) {
			b.Revision = s.H.Head.Revision
			b.Tick(model.Ticked{Key: c.key, What: model.Some(c.what)})
		})
		got := built.Since(s, &h.Builds[0])
		if len(got.Differences) != 1 || got.Differences[0].Says != c.says || got.Differences[0].At != c.at || got.Again != 1 {
			t.Errorf("%s: %+v", c.key, got)
			continue
		}
		kept := h.EditBuild("1", func(b *model.Build) { got.Differences[0].Keep(b, "14", "") })
		if left := built.Since(s, &kept.Builds[0]); len(left.Differences) > 0 {
			t.Errorf("%s: kept, and still asked: %s", c.key, left.Says())
		}
		// One that was kept so hides none of what is gone behind it, nor does one that makes nothing, or one on record by key alone.
		other := kept.EditBuild("1", func(b *model.Build) {
			b.Tick(model.Ticked{Key: "lot none", What: model.Some(model.What{})})
			b.Tick(model.Ticked{Key: "cut X7"})
			b.Tick(model.Ticked{Key: "cut X8", What: model.Some(model.What{Members: members})})
		})
		if left := built.Since(s, &other.Builds[0]); len(left.Differences) != 1 || left.Differences[0].At != "X8" {
			t.Errorf("%s: kept, and of what is gone behind it %+v", c.key, left.Differences)
		}
		struck := kept.EditBuild("1", func(b *model.Build) { built.Strike(b, 0) })
		if back := built.Since(s, &struck.Builds[0]); len(back.Differences) != 1 || len(struck.Builds[0].Apart) != 0 {
			t.Errorf("%s: struck out, and not asked again: %+v", c.key, struck.Builds[0])
		}
	}
}

// Work that is taken back takes the holds with it that were signed for it, and the mass that it is in; what is
// put on after a hold leaves that hold signed.
func TestProofsOfWork(t *testing.T) {
	s := calctest.Built(t, text())
	s = calc.Build(ticked(calc.Build(run.Written(s), s.Base, nil)), s.Base, nil)
	b, facts := &s.H.Builds[0], built.Facts(s)
	for step, want := range map[string]string{
		"cut 101":                           "hold bare hold pinned hold fit weigh hold loaded",
		"pin P1":                            "hold pinned hold fit weigh hold loaded",
		"shrink sheath T1 AS23053/16 6.4":   "weigh",
		"thread sheath T1 AS23053/16 6.4":   "hold fit weigh",
		"weigh":                             "",
		"hold fit":                          "",
		"no step of this harness":           "",
		"shrink label P1 marker sleeve 9.5": "weigh",
	} {
		got := built.Proofs(facts, b, []string{step})
		slices.Sort(got)
		have := strings.Fields(strings.ReplaceAll(want, "hold ", "hold_"))
		for k := range have {
			have[k] = strings.ReplaceAll(have[k], "_", " ")
		}
		slices.Sort(have)
		if !slices.Equal(got, have) {
			t.Errorf("%s: %q, not %q", step, got, have)
		}
	}
	open := s.H.EditBuild("1", func(b *model.Build) {
		b.EachTest, b.MassG = model.Some(true), model.Some(unit.Gram(200))
		built.Undo(b, built.Weigh, "a label more")
	})
	b = &open.Builds[0]
	steps := run.For(s, b)
	k := slices.IndexFunc(steps, func(r run.RunStep) bool { return r.Kind == run.WeighStep })
	if b.MassG.Set || k < 0 || steps[k].In(b) || len(built.Proofs(facts, b, []string{"cut 101"})) != 4 {
		t.Errorf("taken back, it is not weighed again: %+v, step %d", b.MassG, k)
	}
}
