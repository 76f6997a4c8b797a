package runlog_test

import (
	"bytes"
	"fmt"
	"reflect"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"contralay/model"
	"contralay/model/file"
	"contralay/model/runlog"
	"contralay/model/unit"
)

// read is lines as another bench reads them.
func read(t interface{ Fatal(...any) }, lines []runlog.Line) []runlog.Line {
	var out []runlog.Line
	for _, text := range bytes.SplitAfter(runlog.Encode(lines), []byte("\n")) {
		if len(text) == 0 {
			continue
		}
		l, err := runlog.Decode(bytes.TrimSuffix(text, []byte("\n")))
		if err != nil {
			t.Fatal(fmt.Sprintf("%s: %v", text, err))
		}
		out = append(out, l)
	}
	return out
}

// A tick is one line, with the keys of the file of a harness.
func TestLine(t *testing.T) {
	tick := model.Ticked{Key: "cut 101", At: model.Some("2026-05-11 16:44"), By: model.Some("14"),
		What: model.Some(model.What{Spec: model.Some("AS22759/32"), MM: model.Some(unit.Millimetre(750))})}
	lines := runlog.Between(nil, []model.Build{{Serial: "007", Steps: []model.Ticked{tick}}})
	for k := range lines {
		lines[k].Bench, lines[k].Design = "a1", "d2"
	}
	want := `{"bench":"a1","design":"d2","do":"open","serial":"007"}
{"bench":"a1","design":"d2","serial":"007","is":{"step":[{"at":"2026-05-11 16:44","by":"14","key":"cut 101",` +
		`"what":{"mm":750,"spec":"AS22759/32"}}]}}
`
	if got := string(runlog.Encode(lines)); got != want {
		t.Errorf("got\n%swant\n%s", got, want)
	}
	if got := read(t, lines); !reflect.DeepEqual(got, lines) {
		t.Errorf("read back %+v", got)
	}
}

// A record that has every key goes through the log as it is, from nothing and to nothing.
func TestEveryKeyGoesThrough(t *testing.T) {
	d, err := file.Load("../../testdata/every-key.toml")
	if err != nil {
		t.Fatal(err)
	}
	all := d.Harness.Builds
	got := runlog.Fold(nil, read(t, runlog.Between(nil, all)))
	if !reflect.DeepEqual(got, all) {
		t.Errorf("got  %+v\nwant %+v", got, all)
	}
	if left := runlog.Fold(all, read(t, runlog.Between(all, nil))); len(left) != 0 {
		t.Errorf("left over: %+v", left)
	}
	if lines := runlog.Between(all, all); len(lines) != 0 {
		t.Errorf("nothing has changed, and the log says %s", runlog.Encode(lines))
	}
}

// edits are what a run does to a record; n chooses among what each may be about.
var edits = []func(b *model.Build, n int){
	func(b *model.Build, n int) { b.Tick(tick(n, "7")) },
	func(b *model.Build, n int) { b.Begin(tick(n, "7"), fmt.Sprint("p", n%3)) },
	func(b *model.Build, n int) { b.Begin(tick(n, "7"), "p0", "p1", "p2") },
	func(b *model.Build, n int) { b.TakeOff(key(n), fmt.Sprint("p", n%3)) },
	func(b *model.Build, n int) { b.Undo(key(n), "wrong wire") },
	func(b *model.Build, n int) { // taken back without a word, as undo at the bench does
		b.Steps = slices.DeleteFunc(b.Steps, func(t model.Ticked) bool { return t.Key == key(n) })
	},
	func(b *model.Build, n int) { // kept as it was built
		if t := b.TickOf(key(n)); t != nil {
			t.Sheet = model.Some(model.What{Size: model.Some("20")})
		}
	},
	func(b *model.Build, n int) {
		b.Tests = append(b.Tests, model.Test{Net: model.Some(key(n)), Ohm: model.Some(float64(n) / 8)})
	},
	func(b *model.Build, n int) {
		r := b.ReadingOf("T1", n%3)
		if r == nil {
			b.Readings = append(b.Readings, model.Reading{Branch: "T1", Layer: n % 3})
			r = &b.Readings[len(b.Readings)-1]
		}
		r.OverMM = append(r.OverMM, unit.Millimetre(n)/4)
		if n%2 == 0 {
			r.BareMM = append(r.BareMM, unit.Millimetre(n)/4)
		}
	},
	func(b *model.Build, n int) {
		if r := b.ReadingOf("T1", n%3); r != nil {
			r.LayMM = model.Some(unit.Millimetre(n))
		}
	},
	func(b *model.Build, n int) {
		if r := b.ReadingOf("T1", n%3); r != nil && len(r.OverMM) > 0 {
			r.OverMM = slices.Delete(r.OverMM, len(r.OverMM)-1, len(r.OverMM))
		}
	},
	func(b *model.Build, n int) {
		b.Signed = append(slices.DeleteFunc(b.Signed, func(s model.Signature) bool { return s.Step == key(n) }),
			model.Signature{Step: key(n), By: "14"})
	},
	func(b *model.Build, n int) {
		b.Apart = append(b.Apart, model.Deviation{At: key(n), Says: "green, not red"})
	},
	func(b *model.Build, n int) {
		if len(b.Apart) > 0 {
			b.Apart[n%len(b.Apart)].By = model.Some("4")
		}
	},
	func(b *model.Build, n int) {
		b.Used = append(slices.DeleteFunc(b.Used, func(u model.UsedWire) bool { return u.Size == "22" }),
			model.UsedWire{Spec: "S", Size: "22", UsedMM: unit.Millimetre(n)})
	},
	func(b *model.Build, n int) {
		for k := range b.Again {
			if b.Again[k].End == key(n) {
				b.Again[k].Times++
				return
			}
		}
		b.Again = append(b.Again, model.Again{End: key(n), Times: 1})
	},
	func(b *model.Build, n int) { b.Note = model.Some(fmt.Sprint("note ", n)) },
	func(b *model.Build, _ int) { b.Note = model.Opt[string]{} },
	func(b *model.Build, n int) { b.MassG = model.Some(unit.Gram(1 + n)) },
}

func key(n int) string { return fmt.Sprint("step ", n%4) }

func tick(n int, by string) model.Ticked {
	return model.Ticked{Key: key(n), By: model.Some(by), What: model.Some(model.What{Size: model.Some("22")})}
}

// one draws a change to a build, of those above.
func one(t *rapid.T, all []model.Build) []model.Build {
	h := &model.Harness{Builds: all}
	f := rapid.SampledFrom(edits).Draw(t, "edit")
	n := rapid.IntRange(0, 11).Draw(t, "about")
	return h.EditBuild(rapid.SampledFrom([]string{"1", "2"}).Draw(t, "serial"), func(b *model.Build) { f(b, n) }).Builds
}

// Whatever one bench does, another that reads the log has the same, in the same order.
func TestAnotherBenchHasTheSame(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var is, other []model.Build
		for range rapid.IntRange(1, 20).Draw(t, "edits") {
			next := one(t, is)
			other = runlog.Fold(other, read(t, runlog.Between(is, next)))
			is = next
			if got, want := sorted(other), sorted(is); !reflect.DeepEqual(got, want) {
				t.Fatalf("got  %+v\nwant %+v", got, want)
			}
		}
	})
}

// sorted is builds with what has no order in it in one order: undone and removed in one, a used reel
// and a signature keep the place that they had.
func sorted(all []model.Build) []string {
	var out []string
	for _, b := range all {
		var texts []string
		for _, l := range runlog.Between(nil, []model.Build{b}) {
			texts = append(texts, string(runlog.Encode([]runlog.Line{l})))
		}
		slices.Sort(texts)
		out = append(out, b.Serial, strings.Join(texts, ""))
	}
	return out
}

// Two benches that do things at once: each sees its own at once and the other's later. The log has one
// order; whoever reads it has the same; what either ticked, tested or read is there.
func TestTwoAtOnce(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var log []runlog.Line
		var base, a, b []model.Build
		for range rapid.IntRange(1, 6).Draw(t, "rounds") {
			a, b = base, base
			for range rapid.IntRange(0, 3).Draw(t, "of one") {
				next := one(t, a)
				log, a = append(log, read(t, runlog.Between(a, next))...), next
			}
			for range rapid.IntRange(0, 3).Draw(t, "of the other") {
				next := one(t, b)
				log, b = append(log, read(t, runlog.Between(b, next))...), next
			}
			base = runlog.Fold(nil, log)
			for _, s := range base {
				active := map[string]int{}
				for _, step := range s.Steps {
					if !step.Undone.Set {
						active[step.Key]++
					}
				}
				for key, n := range active {
					if n != 1 {
						t.Fatalf("%s counts %d times", key, n)
					}
				}
			}
		}
	})
}

func ticked(key, by string) model.Ticked { return model.Ticked{Key: key, By: model.Some(by)} }

func begun(key, by string, pieces ...string) model.Ticked {
	return model.Ticked{Key: key, By: model.Some(by), SoFar: pieces}
}

// What two do to one record from the same state, the first line first.
func TestWhoseCounts(t *testing.T) {
	build := func(f func(b *model.Build)) []model.Build {
		b := model.Build{Serial: "1"}
		if f != nil {
			f(&b)
		}
		return []model.Build{b}
	}
	steps := func(all ...model.Ticked) func(b *model.Build) { return func(b *model.Build) { b.Steps = all } }
	test := model.Test{Net: model.Some("A B"), Ohm: model.Some(0.1)}
	undone := func(by, why string) model.Ticked {
		return model.Ticked{Key: "cut 1", By: model.Some(by), Undone: model.Some(why)}
	}
	for _, c := range []struct {
		name                   string
		was, first, then, want func(b *model.Build)
	}{
		{"both tick: once, by the first", nil, steps(ticked("cut 1", "7")), steps(ticked("cut 1", "8")), steps(ticked("cut 1", "7"))},
		{"each ticks another", nil, steps(ticked("cut 1", "7")), steps(ticked("cut 2", "8")),
			steps(ticked("cut 1", "7"), ticked("cut 2", "8"))},
		{"each lays other pieces", nil, steps(begun("lay", "7", "a")), steps(begun("lay", "8", "b")), steps(begun("lay", "8", "a", "b"))},
		{"both lay the same piece", nil, steps(begun("lay", "7", "a")), steps(begun("lay", "8", "a")), steps(begun("lay", "8", "a"))},
		{"one ticks the whole, the other a piece", nil, steps(ticked("lay", "7")), steps(begun("lay", "8", "a")),
			steps(ticked("lay", "7"))},
		{"a piece, then the whole", nil, steps(begun("lay", "8", "a")), steps(ticked("lay", "7")), steps(ticked("lay", "7"))},
		{"both undo: the first reason", steps(ticked("cut 1", "7")), steps(undone("7", "damaged")), steps(undone("7", "wrong wire")),
			steps(undone("7", "damaged"))},
		{"one undoes, the other keeps it as built", steps(ticked("cut 1", "7")), steps(undone("7", "damaged")),
			steps(model.Ticked{Key: "cut 1", By: model.Some("7"), Sheet: model.Some(model.What{})}),
			steps(undone("7", "damaged"), model.Ticked{Key: "cut 1", By: model.Some("7"), Sheet: model.Some(model.What{})})},
		{"one takes a piece off, the other lays one", steps(begun("lay", "7", "a", "b")), steps(begun("lay", "7", "a")),
			steps(begun("lay", "8", "a", "b", "c")), steps(begun("lay", "8", "a", "c"))},
		{"both test the same", nil, func(b *model.Build) { b.Tests = []model.Test{test} },
			func(b *model.Build) { b.Tests = []model.Test{test} },
			func(b *model.Build) { b.Tests = []model.Test{test, test} }},
		{"both read", nil,
			func(b *model.Build) {
				b.Readings = []model.Reading{{Branch: "T1", Layer: 1, OverMM: []unit.Millimetre{5.1}}}
			},
			func(b *model.Build) {
				b.Readings = []model.Reading{{Branch: "T1", Layer: 1, OverMM: []unit.Millimetre{5.2}}}
			},
			func(b *model.Build) {
				b.Readings = []model.Reading{{Branch: "T1", Layer: 1, OverMM: []unit.Millimetre{5.1, 5.2}}}
			}},
		{"both sign: the first", nil, func(b *model.Build) { b.Signed = []model.Signature{{Step: "hold bare", By: "14"}} },
			func(b *model.Build) { b.Signed = []model.Signature{{Step: "hold bare", By: "15"}} },
			func(b *model.Build) { b.Signed = []model.Signature{{Step: "hold bare", By: "14"}} }},
		{"each makes a contact again", func(b *model.Build) { b.Again = []model.Again{{End: "P1:A", Times: 1}} },
			func(b *model.Build) { b.Again = []model.Again{{End: "P1:A", Times: 2}} },
			func(b *model.Build) { b.Again = []model.Again{{End: "P1:A", Times: 2}} },
			func(b *model.Build) { b.Again = []model.Again{{End: "P1:A", Times: 3}} }},
		{"both begin it: the first", nil, func(b *model.Build) { b.Begun, b.Revision = model.Some("2026-05-11"), model.Some("C") },
			func(b *model.Build) { b.Begun, b.Revision = model.Some("2026-05-12"), model.Some("D") },
			func(b *model.Build) { b.Begun, b.Revision = model.Some("2026-05-11"), model.Some("C") }},
		{"both weigh it: the last", nil, func(b *model.Build) { b.MassG = model.Some[unit.Gram](240) },
			func(b *model.Build) { b.MassG = model.Some[unit.Gram](243) }, func(b *model.Build) { b.MassG = model.Some[unit.Gram](243) }},
		{"the same lot", nil, func(b *model.Build) { b.Lots = []model.Lot{{Of: "22", Lot: "R-7", By: model.Some("7")}} },
			func(b *model.Build) { b.Lots = []model.Lot{{Of: "22", Lot: "R-7", By: model.Some("8")}} },
			func(b *model.Build) { b.Lots = []model.Lot{{Of: "22", Lot: "R-7", By: model.Some("7")}} }},
	} {
		was := build(c.was)
		lines := append(runlog.Between(was, build(c.first)), runlog.Between(was, build(c.then))...)
		got := runlog.Fold(was, read(t, lines))
		if want := build(c.want); !reflect.DeepEqual(got, want) {
			t.Errorf("%s:\ngot  %+v\nwant %+v", c.name, got, want)
		}
	}
	// One starts a serial and takes that back, the other has ticked in it: it stays.
	lines := append(runlog.Between(nil, build(nil)), runlog.Between(nil, build(steps(ticked("cut 1", "8"))))...)
	lines = append(lines, runlog.Between(build(nil), nil)...)
	if got := runlog.Fold(nil, lines); len(got) != 1 || len(got[0].Steps) != 1 {
		t.Errorf("a serial that somebody works on is gone: %+v", got)
	}
}

// Whatever is no line is refused, with what is wrong and what is allowed.
func TestHostileLines(t *testing.T) {
	for _, c := range []struct{ line, says string }{
		{"", "no line of a run log"},
		{"[]", "no line of a run log"},
		{`{"serial":"1"`, "no line of a run log"},
		{`{"serial":"1","is":{"step":[{"key":"cut 1"}]}} {}`, "more than one"},
		{`{"serial":"1","run":true}`, "unknown field"},
		{`{"is":{"note":"a"}}`, "no serial"},
		{`{"serial":"1\u001b[2J"}`, "control character"},
		{"{\"serial\":\"\xff\"}", "UTF-8"},
		{`{"serial":"1","is":{"serial":"2"}}`, "the serial stands within"},
		{`{"serial":"1","is":{"step":[{"at":"now"}]}}`, "it is missing"},
		{`{"serial":"1","is":{"step":[{"key":"a\u202eb"}]}}`, "writing direction"},
		{`{"serial":"1","is":{"steps":[]}}`, "did you mean step"},
		{`{"serial":"1","is":{"step":"cut 1"}}`, "allowed: a list of tables"},
		{`{"serial":"1","is":{"mass_g":-1}}`, "more than 0"},
		{`{"serial":"1","is":{"mass_g":1e999}}`, "allowed: a number"},
		{`{"serial":"1","is":{"again":[{"end":"P1:A","times":1.5}]}}`, "allowed: a whole number"},
		{`{"serial":"1","do":"erase"}`, "allowed: open, close, saving, saved"},
		{`{"do":"saved"}`, "no sum"},
		{`{"do":"close","serial":"1","was":{"note":"a"}}`, "with what was built"},
		{`{"serial":"` + strings.Repeat("1", runlog.MostLine) + `"}`, "longer than"},
	} {
		_, err := runlog.Decode([]byte(c.line))
		if err == nil || !strings.Contains(err.Error(), c.says) {
			t.Errorf("%.60q: %v, want %q", c.line, err, c.says)
		} else if strings.ContainsAny(err.Error(), "\x1b\u202e\n") {
			t.Errorf("%.60q: the error commands a terminal: %q", c.line, err)
		}
	}
	for _, c := range []struct{ line, says string }{
		{"format = 1", "no run log"}, {"contralay run log 1", "no run log"}, {"contralay run log 2 a b", "from a newer contralay"},
		{"contralay run log 1 a\x1b b", "control character"}, {"contralay run log 1  b", "no run log"},
	} {
		if _, _, err := runlog.ReadFirst([]byte(c.line)); err == nil || !strings.Contains(err.Error(), c.says) {
			t.Errorf("%q: %v, want %q", c.line, err, c.says)
		}
	}
	if id, sum, err := runlog.ReadFirst([]byte("contralay run log 1 a1 -")); id != "a1" || sum != "" || err != nil {
		t.Errorf("%q %q %v", id, sum, err)
	}
}

// What is read can be written and read again, and folding it never fails.
func FuzzDecode(f *testing.F) {
	f.Add([]byte(`{"bench":"a1","serial":"007","is":{"step":[{"key":"cut 101","what":{"mm":750.5}}],"goes_by":[]}}`))
	f.Add([]byte(`{"serial":"1","was":{"reading":[{"branch":"T1","layer":1,"over_mm":[5.1]}]},"is":{"again":[{"end":"A","times":2}]}}`))
	f.Add([]byte(`{"do":"saved","sum":"00"}`))
	f.Fuzz(func(t *testing.T, line []byte) {
		l, err := runlog.Decode(line)
		if err != nil {
			return
		}
		if again := read(t, []runlog.Line{l}); !reflect.DeepEqual(again, []runlog.Line{l}) {
			t.Errorf("%+v\nis read back as %+v", l, again)
		}
		runlog.Fold(runlog.Fold(nil, []runlog.Line{l}), []runlog.Line{l})
	})
}
