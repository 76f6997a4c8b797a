package list

import (
	"fmt"
	"strings"
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Words of a list, by hand.
func TestWordsOfALine(t *testing.T) {
	wire := func(colour, shade, size string) *model.Wire {
		w := &model.Wire{Size: size}
		if colour != "" {
			w.Colour = model.Some(colour)
		}
		if shade != "" {
			w.Shade = model.Some(model.Shade(shade))
		}
		return w
	}
	long, open := &model.Branch{LengthMM: 450.4}, &model.Branch{}
	for _, c := range [][2]string{
		{Colour("96"), "96  white/blue"}, {Colour("6"), "6  blue"}, {Colour("WHBU"), "WHBU"}, {Colour(""), ""},
		{ColourWord(wire("6", "light", "")), "light blue"}, {ColourWord(wire("96", "", "")), "white/blue"}, {ColourWord(wire("WHBU", "",
			"")), ""},
		{ColourWord(wire("WHBU", "dark", "")), "dark"}, {ColourWord(wire("", "", "")), ""},
		{Size(wire("", "", "22")), "22 AWG"}, {Size(wire("", "", "0.35mm2")), "0.35 mm2"},
		{Capital("layer 2"), "Layer 2"}, {Capital(""), ""}, {Capital("x"), "X"}, {Dash(""), "-"}, {Dash("a"), "a"},
		{Mem(catalogue.Memory) + Mem(catalogue.Published) + Mem(""), "~"}, {Value("-") + Value("a") + Value(""), "a"},
		{bare("OD, mm"), "OD"}, {bare("OD"), "OD"}, {TermOf("P1:A"), "P1"}, {TermOf("S1"), "S1"}, {Word("key ", "N"), "key N"},
		{Word("key ", ""), ""},
		{strings.Join(NonEmpty("a", "", "-", "b"), "+"), "a+b"},
		{fmt.Sprint(Turn(91), Turn(92.5), Turn(92.4), Turn(0)), "90 95 90 0"},
		{Long(unit.MM, long), "450"}, {Long(unit.MM, open), "?"}, {LongIn(unit.MM, long), "450 mm"}, {LongIn(unit.MM, open),
			"not measured yet,"},
	} {
		if c[0] != c[1] {
			t.Errorf("%q, want %q", c[0], c[1])
		}
	}
}

// What a maker of tables says of ends, datums, clocks, bands and tolerances, by hand.
func TestWordsOfAMaker(t *testing.T) {
	some := model.Some[string]
	h := &model.Harness{Head: model.Head{Units: some("mm")}, Terminations: []model.Termination{{ID: "P1",
		Datum: model.Some(model.DatumBootLip)},
		{ID: "P2", Clock: model.Some(3), BootClock: model.Some(12)}, {ID: "P3", BootClock: model.Some(6)}, {ID: "P4",
			Clock: model.Some(1)}},
		Breakouts: []model.Breakout{{ID: "J"}}, Splices: []model.Splice{{ID: "S", At: "J"}},
		Wires: []model.Wire{{ID: "1", From: some("P1:A"), To: some("S")}, {ID: "2", From: some("P1:B")}, {ID: "3", To: some("P1:C"),
			CappedAt: some("J")}}}
	m := MakerOf(&sheet.Sheet{H: h, Index: model.NewIndex(h)})
	w := h.Wires
	term := func(k int) string { return m.Clock(&h.Terminations[k]) }
	learned := &sheet.Branch{OverMM: 10.5, OverMinMM: 10.1, OverMaxMM: 10.9, Standing: catalogue.Memory,
		Learned: sheet.Learned{PredictedMM: 10.2, Correction: catalogue.Correction{Of: "over, 2 layers", Spread: 0.02, Readings: 7}}}
	thinner := *learned
	thinner.Learned.PredictedMM, thinner.Standing = 10.75, catalogue.Published
	sheath := &sheet.Branch{}
	sheath.Sheath.Verdict.OverMM = 12.34
	before := m.InSheath(sheath)
	sheath.Sheath.Verdict.Wraps = true
	untold := m.InSheath(sheath)
	sheath.Sheath.Tube = model.Some(catalogue.Tube{ID: "X"})
	for _, c := range [][2]string{
		{m.End(&w[0], true), "P1:A"}, {m.End(&w[0], false), "splice S"}, {m.End(&w[1], false), "open"}, {m.End(&w[2], true), "capped at J"},
		{m.End(&w[2], false), "P1:C"}, {m.Datum("P1"), "boot lip of P1"}, {m.Datum("P2"), "P2"}, {m.Datum("J"), "centre of J"},
		{term(0), "-"}, {term(1), "key at 3, boot to 12"}, {term(2), "boot to 6"}, {term(3), "key at 1"},
		{m.In("OD"), "OD, mm"}, {m.Wire("2").ID, "2"}, {m.Wire("9").ID, "9"}, {m.Wire("9").Spec, ""}, {m.WireIDs([]int{2, 0}), "3, 1"},
		{m.OptLength(model.Opt[unit.Millimetre]{}), "-"}, {m.OptLength(model.Some(unit.Millimetre(12.4))), "12"},
		{m.Band(&sheet.Branch{}), "-"}, {m.Band(&sheet.Branch{OverMM: 10.24, OverMinMM: 9.9, OverMaxMM: 10.5}), "10.2 (9.9 to 10.5)"},
		{m.Band(learned), "10.5~ (10.1 to 10.9); predicted 10.2, learned +0.30, spread 0.21 from 7 readings"},
		{m.Band(&thinner), "10.5 (10.1 to 10.9); predicted 10.8, learned -0.25, spread 0.21 from 7 readings"},
		{m.Tolerance(&model.Branch{}), "-"}, {m.Tolerance(&model.Branch{ToleranceMM: []unit.Millimetre{0, 10}}), "-0 +10"},
		{before, "-"}, {untold, "-"}, {m.InSheath(sheath), "12.3"},
	} {
		if c[0] != c[1] {
			t.Errorf("%q, want %q", c[0], c[1])
		}
	}
	h.Head.Units = some("in")
	if got := MakerOf(&sheet.Sheet{H: h}).In("OD"); got != "OD, in" && got != "OD, inch" {
		t.Errorf("%q", got)
	}
}

// A splice as whoever lays its wires needs it, by hand.
func TestWhatASpliceBecomes(t *testing.T) {
	h := &model.Harness{Splices: []model.Splice{{ID: "S1", At: "J"}, {ID: "S2", At: "J", Toward: model.Some("L"),
		OffsetMM: model.Some(unit.Millimetre(55))}},
		Wires: []model.Wire{{ID: "1"}, {ID: "2"}, {ID: "3"}, {ID: "4"}, {ID: "5"}}}
	for _, c := range []struct {
		splice    int
		near, far []int
		want      string
	}{
		{0, []int{0}, []int{1, 2, 3}, "splice S1, at the centre of J: wire 1 becomes 3 wires, 2, 3 and 4"},
		{1, []int{1, 2}, []int{0}, "splice S2, 55 mm from J along L: wire 1 becomes 2 wires, 2 and 3"},
		{1, []int{0, 1}, []int{2, 3, 4}, "splice S2, 55 mm from J along L: wires 1 and 2 become wires 3, 4 and 5"},
		{0, nil, []int{1}, "splice S1, at the centre of J"}, {0, []int{1}, nil, "splice S1, at the centre of J"}, {0, nil, nil,
			"splice S1, at the centre of J"},
	} {
		s := &sheet.Sheet{H: h, Splices: make([]sheet.Splice, 2)}
		s.Splices[c.splice].Near, s.Splices[c.splice].Far = c.near, c.far
		if got := Becomes(s, unit.MM, c.splice); got != c.want {
			t.Errorf("%q, want %q", got, c.want)
		}
	}
}

// A table by hand: on paper its own columns with a mark on what rests on memory, in the file one value a cell, a standing behind its
// figure,
// columns that a page lacks, other rows; nothing for a dash.
func TestATableOfBoth(t *testing.T) {
	type row struct {
		id   string
		od   string
		st   catalogue.Standing
		from string
	}
	columns := []Column[row]{
		Text("wire", func(r row) string { return r.id }),
		Figure("OD, mm", func(r row) string { return r.od }).Stands(func(r row) catalogue.Standing { return r.st }),
		Text("way", func(r row) string { return r.from + "!" }).InFile(Text("from", func(r row) string { return r.from }),
			Figure("n", func(row) string { return "1" })),
		Blank[row]("seen"),
		FileOnly(Text("sheet", func(row) string { return "K1" })),
		Text("page alone", func(row) string { return "p" }).InFile(),
	}
	paper := []row{{"1", "1.1", catalogue.Memory, "A"}, {"2", "-", catalogue.Memory, "-"}, {"3", "", catalogue.Memory, ""}}
	file := []row{{"4", "2.2", catalogue.Published, "B"}, {"5", "-", catalogue.Memory, "-"}}
	got := OfBoth(Table{File: "f"}, columns, paper, file)
	for _, c := range [][2]string{
		{fmt.Sprintf("%q", got.Head), `["wire" "OD, mm" "way" "seen" "page alone"]`},
		{fmt.Sprint(got.Align), fmt.Sprint([]Align{ToLeft, ToRight, ToLeft, ByHand, ToLeft})},
		{fmt.Sprintf("%q", got.Rows), `[["1" "1.1~" "A!" "" "p"] ["2" "-" "-!" "" "p"] ["3" "" "!" "" "p"]]`},
		{fmt.Sprintf("%q", got.Filed.Head), `["wire" "OD, mm" "standing of OD" "from" "n" "seen" "sheet"]`},
		{fmt.Sprint(got.Filed.Figure), "[false true false false true false false]"},
		{fmt.Sprintf("%q", got.Filed.Rows), `[["4" "2.2" "published" "B" "1" "" "K1"] ["5" "" "" "" "1" "" "K1"]]`},
	} {
		if c[0] != c[1] {
			t.Errorf("%s\nwant %s", c[0], c[1])
		}
	}
	if same := Of(Table{}, columns, paper); len(same.Rows) != 3 || len(same.Filed.Rows) != 3 {
		t.Errorf("%+v", same)
	}
}
