package wirelist_test

import (
	"strings"
	"testing"

	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/value"
)

// ² alone is mm², "red or blue" is no colour, and a fuse that is none is none.
func TestSmallHabits(t *testing.T) {
	for text, want := range map[string]string{"0,35²": "0.35mm2", "0.75 ²": "0.75mm2", "0.5mm²": "0.5mm2", "22 AWG": "22"} {
		if g, ok := value.ParseGauge(text, value.BareAWG, value.MarkUnknown); !ok || g.Size != want {
			t.Errorf("%q: %v %+v", text, ok, g)
		}
	}
	if c, ok := value.ParseColour("red or blue", "en"); ok {
		t.Errorf("red or blue is %v", c)
	}
	if _, ok := value.ParseColour("red/blue", "en"); !ok {
		t.Error("red/blue is no colour")
	}
	tables, err := value.Read("fuses.csv", []byte("wire,signal,from,to,gauge,fuse\n1,Lamp,PDM:1,LP:1,20,none\n2,Horn,PDM:2,HN:1,20,5A\n"),
		value.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	h, _, err := wirelist.Import(tables, draft.Options{})
	if err != nil {
		t.Fatal(err)
	}
	if len(h.Feeds) != 1 {
		t.Errorf("%d feeds: %+v", len(h.Feeds), h.Feeds)
	}
}

// A row of a great many cells is refused by a reader that reads it once: one that looks for
// the end of the line at each cell takes minutes for these.
func TestLongRow(t *testing.T) {
	_, err := value.Read("long.csv", []byte("a"+strings.Repeat(",a", 2_000_000)), value.Limits{})
	if err == nil || !strings.Contains(err.Error(), "cells") {
		t.Errorf("%v", err)
	}
}

// A column headed "Wire" that holds sizes is the size: two pins of one size are not joined.
func TestSizesUnderWire(t *testing.T) {
	const list = "## J1\n\n| Pin | Function | Wire | Colour |\n|---|---|---|---|\n| 1 | INJ 1 | 22 | BU |\n| 2 | INJ 2 | 22 | GN |\n| 3 " +
		"| 12V | 20 AWG | RD |\n"
	tables, err := value.Read("pins.md", []byte(list), value.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	h, rep, err := wirelist.Import(tables, draft.Options{})
	if err != nil {
		t.Fatal(err)
	}
	if len(h.Wires) != 3 || h.Wires[0].Size != "22" || h.Wires[2].Size != "20" || h.Wires[0].To.Set {
		t.Errorf("%+v", h.Wires)
	}
	if !strings.Contains(strings.Join(rep.Full(), "\n"), "column of wires holds sizes") {
		t.Errorf("%s", strings.Join(rep.Full(), "\n"))
	}
	// Numbers of wires stay numbers of wires.
	tables, _ = value.Read("ids.csv", []byte("wire,from,to\n20,A:1,B:1\n22,A:2,B:2\n"), value.Limits{})
	if h, _, err := wirelist.Import(tables, draft.Options{}); err != nil || h.Wires[0].ID != "20" || h.Wires[1].ID != "22" {
		t.Errorf("%v %+v", err, h.Wires)
	}
	// What a person said of the column holds, and the screen shows what the import takes.
	tables, _ = value.Read("pins.md", []byte(list), value.Limits{})
	field := func(r *name.Recipe) name.Field {
		for _, c := range shape.Columns(tables[0], r) {
			if c.Head == "Wire" {
				return c.Field
			}
		}
		return ""
	}
	if f := field(nil); f != name.FieldGauge {
		t.Errorf("shown as %s", f)
	}
	if f := field(&name.Recipe{Columns: map[string]name.Field{"Wire": name.FieldWire}}); f != name.FieldWire {
		t.Errorf("said to be the wire, and shown as %s", f)
	}
}
