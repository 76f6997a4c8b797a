package main

import (
	"bytes"
	"os"
	"testing"

	"contralay/calc"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/file"
)

// The demonstration is embedded here and lies in testdata for everyone to read;
// it is sound as shipped.
func TestDemonstrationHarness(t *testing.T) {
	text, err := os.ReadFile("../../testdata/demo.toml")
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(text, demonstration) {
		t.Fatal("cmd/contralay/demo.toml and testdata/demo.toml differ")
	}
	d, err := file.Parse(demonstration, "demo.toml")
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(file.Encode(d), demonstration) {
		t.Error("the demonstration does not save byte-equal")
	}
	cat, err := catalogue.Default()
	if err != nil {
		t.Fatal(err)
	}
	s := calc.Complete(&d.Harness, cat, nil)
	warns, sizes := 0, map[string]bool{}
	for _, g := range s.Snags {
		switch g.Level {
		case sheet.Stop:
			t.Errorf("a stop on the demonstration: %+v", g)
		case sheet.Warn:
			warns++
		}
	}
	if warns > 3 {
		t.Errorf("%d warnings on the demonstration; three at most", warns)
	}
	spares, leaving := 0, map[string]int{}
	for i, w := range d.Harness.Wires {
		sizes[w.Size] = true
		leaving[w.From.V]++
		if w.Role.V == model.RoleSpare && s.Wires[i].HasPath {
			spares++
		}
		if !s.Wires[i].HasPath || s.Wires[i].Cut <= 0 {
			t.Errorf("wire %s has no length", w.ID)
		}
	}
	four := false
	for _, sp := range d.Harness.Splices {
		four = four || leaving[sp.ID] >= 4
	}
	shielded, data := false, false
	for _, u := range d.Harness.Units {
		shielded = shielded || u.Shield.V
		data = data || (!u.Shield.V && u.Build.V == model.BuildPair)
	}
	if len(d.Harness.Wires) < 40 || len(sizes) != 3 || spares < 3 || !four || !shielded || !data {
		t.Errorf("wires %d, sizes %d, spares %d, a splice to four %v, a shielded pair %v, a data pair %v", len(d.Harness.Wires), len(sizes),
			spares, four, shielded, data)
	}
}
