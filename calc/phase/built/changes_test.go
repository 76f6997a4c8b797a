package built

import (
	"fmt"
	"testing"

	"contralay/model"
	"contralay/model/unit"
)

// What is otherwise, figure by figure: within its tolerance nothing, a hair beyond it one line with both figures as they are
// read, the sheet's
// first. A wire is cut within 10 mm or the step it is rounded to; a cover lies within 5; filler and binder within 0.05; a lay
// and an OD within a tenth.
func TestChangesByHand(t *testing.T) {
	mm := func(v float64) model.Opt[unit.Millimetre] { return model.Some(unit.Millimetre(v)) }
	type of struct {
		name  string
		step  unit.Millimetre
		set   func(w *model.What, v float64)
		was   float64
		same  float64
		other float64
		want  string
	}
	for _, c := range []of{
		{"cut", 5, func(w *model.What, v float64) { w.MM = mm(v) }, 1000, 1010, 1010.6, "1011 mm 1000 mm"},
		{"cut by its step", 25, func(w *model.What, v float64) { w.MM = mm(v) }, 1000, 975, 974, "974 mm 1000 mm"},
		{"finished", 25, func(w *model.What, v float64) { w.FinishedMM = mm(v) }, 1000, 1010, 1011, "1011 mm 1000 mm"},
		{"from", 0, func(w *model.What, v float64) { w.FromMM = mm(v) }, 100, 105, 106, "106 mm 100 mm"},
		{"to", 0, func(w *model.What, v float64) { w.ToMM = mm(v) }, 100, 95, 94, "94 mm 100 mm"},
		{"filler", 0, func(w *model.What, v float64) { w.FillerMM = mm(v) }, 1.2, 1.25, 1.26, "1.26 mm 1.20 mm"},
		{"binder", 0, func(w *model.What, v float64) { w.BindMM = mm(v) }, 0.4, 0.45, 0.46, "0.46 mm 0.40 mm"},
		{"lay", 0, func(w *model.What, v float64) { w.LayMM = mm(v) }, 90, 100, 101, "101 mm 90 mm"},
		{"OD", 0, func(w *model.What, v float64) { w.OverMM = mm(v) }, 9, 10, 10.1, "10.1 mm 9.0 mm"},
		{"way", 0, func(w *model.What, v float64) { w.PathMM = []unit.Millimetre{40, unit.Millimetre(v)} }, 60, 65, 66, "106 mm 100 mm"},
		{"fillers", 0, func(w *model.What, v float64) { w.Fillers = model.Some(int(v)) }, 2, 2, 3, "3 2"},
	} {
		was, same, other := model.What{}, model.What{}, model.What{}
		c.set(&was, c.was)
		c.set(&same, c.same)
		c.set(&other, c.other)
		if got := changes(Lay, c.step, was, same); len(got) != 0 {
			t.Errorf("%s: %v is not the same as %v: %v", c.name, c.same, c.was, got)
		}
		got := changes(Lay, c.step, was, other)
		if len(got) != 1 || fmt.Sprint(got[0].is, " ", got[0].was) != c.want {
			t.Errorf("%s: %+v, want %s", c.name, got, c.want)
		}
		back := changes(Lay, c.step, other, was)
		if len(back) != 1 || back[0].is != got[0].was || back[0].was != got[0].is {
			t.Errorf("%s: the other way round %+v", c.name, back)
		}
		if none := changes(Lay, c.step, was, model.What{}); c.name != "way" && c.name != "fillers" && (len(none) != 1 ||
			none[0].is != "none") {
			t.Errorf("%s: left out %+v", c.name, none)
		}
	}
	if got := changes(Cut, 0, model.What{PathMM: []unit.Millimetre{1}}, model.What{PathMM: []unit.Millimetre{99}}); len(got) != 0 {
		t.Errorf("the way of a wire that is cut: %v", got)
	}
	for _, c := range []struct {
		name string
		set  func(w *model.What, v string)
	}{
		{"spec", func(w *model.What, v string) { w.Spec = model.Some(v) }}, {"size", func(w *model.What,
			v string) {
			w.Size = model.Some(v)
		}},
		{"colour", func(w *model.What, v string) { w.Colour = model.Some(v) }}, {"part", func(w *model.What,
			v string) {
			w.Part = model.Some(v)
		}},
		{"place", func(w *model.What, v string) { w.Place = model.Some(v) }}, {"hand", func(w *model.What,
			v string) {
			w.Hand = model.Some(model.Hand(v))
		}},
		{"members", func(w *model.What, v string) { w.Members = []string{"m", v} }}, {"ends", func(w *model.What,
			v string) {
			w.Ends = []string{v}
		}},
	} {
		a, b := model.What{}, model.What{}
		c.set(&a, "x")
		c.set(&b, "y")
		got := changes(Lay, 0, a, b)
		want := "y x"
		if c.name == "members" {
			want = "m y m x"
		}
		if len(got) != 1 || fmt.Sprint(got[0].is, " ", got[0].was) != want || len(changes(Lay, 0, a, a)) != 0 {
			t.Errorf("%s: %+v", c.name, got)
		}
	}
	// Members and ends in another order are the same.
	if got := changes(Lay, 0, model.What{Members: []string{"a", "b"}, Ends: []string{"1", "2"}},
		model.What{Members: []string{"b", "a"}, Ends: []string{"2", "1"}}); len(got) != 0 {
		t.Errorf("in another order: %v", got)
	}
}
