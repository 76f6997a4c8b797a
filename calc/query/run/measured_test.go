package run

import (
	"fmt"
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// A step that lays a centre before it is built up reads that one, any other the layer as it is laid: of a centre of 3 mm with 1 mm of tape
// 3 and 4 mm. No layer, no branch: nothing.
func TestWhatAStepMeasures(t *testing.T) {
	of := &model.Reading{BareMM: []unit.Millimetre{1}, OverMM: []unit.Millimetre{2}}
	if got := (RunStep{Bare: true}).Readings(of); (*got)[0] != 1 {
		t.Errorf("bare: %v", *got)
	}
	if got := (RunStep{}).Readings(of); (*got)[0] != 2 {
		t.Errorf("laid: %v", *got)
	}
	h := &model.Harness{Branches: []model.Branch{{ID: "T"}}}
	cat := &catalogue.Catalogue{}
	s := &sheet.Sheet{H: h, Cat: cat, Base: cat, Index: model.NewIndex(h), Branches: []sheet.Branch{{Layers: []sheet.Layer{{OverMM: 4,
		BuiltMM: 1},
		{OverMM: 9}}}}}
	for _, c := range []struct {
		step RunStep
		want unit.Millimetre
		ok   bool
	}{{RunStep{Of: "T", Bare: true}, 3, true}, {RunStep{Of: "T"}, 4, true}, {RunStep{Of: "T", Layer: 1}, 9, true}, {RunStep{Of: "T",
		Layer: 2}, 0, false},
		{RunStep{Of: "L"}, 0, false}} {
		if got, ok := SheetOver(s, &model.Build{}, c.step); got != c.want || ok != c.ok {
			t.Errorf("%+v: %v %v", c.step, got, ok)
		}
	}
	for _, c := range [][2]int{{-1, 0}, {1, 0}, {0, -1}, {0, 0}} { // nothing is laid as yet
		if _, ok := explainBare(s, &model.Build{}, c[0], c[1], []unit.Millimetre{3}); ok {
			t.Errorf("%v is explained", c)
		}
	}
	if got := bandOf(&sheet.Sheet{Wires: []sheet.Wire{{Dia: sheet.Dia{Nominal: 1, Min: 1, Max: 1}}}}); got.small != got.s ||
		got.large != got.s {
		t.Error("wires that are all as they should be have a band")
	}
	if got := Moved(s, &model.Build{}); got != nil {
		t.Errorf("nothing moved: %v", got)
	}
}

// The pieces of an end by cavity: a wire, each of two wires in one, a drain alone; then the cavities of a sealed one that take a plug.
// An end
// that is not sealed has none, and what is no end has no pieces.
func TestPiecesByCavity(t *testing.T) {
	h := &model.Harness{Terminations: []model.Termination{{ID: "P"}, {ID: "Q"}}}
	s := &sheet.Sheet{H: h, Index: model.NewIndex(h)}
	state := map[string]sheet.Cavity{"1": {}, "2": {Wires: []string{"a"}, Drain: "U"}, "3": {Wires: []string{"b", "c"}}, "4": {Drain: "V"},
		"5": {}}
	for _, sealed := range []bool{true, false} {
		s.Terms = append(s.Terms, sheet.Term{Cavities: []string{"1", "2", "3", "4", "5"}, State: state, Sealed: sealed})
	}
	const wires = "2 a 2 [a] U|3 b b 3 [b c] |3 c c 3 [b c] |4 V 4 [] V|"
	for id, want := range map[string]string{"P": wires + "1  1 [] |5  5 [] |", "Q": wires, "R": ""} {
		got := ""
		for _, p := range pinned(s, RunStep{Of: id}) {
			got += fmt.Sprintf("%s %s %s %v %s|", p.Key, p.ID, p.Cavity, p.Wires, p.Drain)
		}
		if got != want {
			t.Errorf("%s: %s\nwant %s", id, got, want)
		}
	}
}
