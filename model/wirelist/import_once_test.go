package wirelist_test

import (
	"strings"
	"testing"

	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/table"
)

// What is taken from a text above a table is said; that the text was left out is not said beside it. One that nothing is taken
// from is left out, and said to be.
func TestTakenTextIsNotLeftOut(t *testing.T) {
	list := "Barge, pump loom\n22 AWG unless a size is given.\nWritten for the yard in spring.\n\nWire,From,To,Size\n" +
		"1,PUMP:1,BOX:1,\n2,PUMP:2,BOX:2,20 AWG\n3,LAMP:1,BOX:3,\n"
	tables, err := table.Read("list.csv", []byte(list), table.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	h, rep, err := wirelist.Import(tables, draft.Options{})
	if err != nil || len(h.Wires) != 3 || h.Wires[0].Size != "22" || h.Wires[1].Size != "20" {
		t.Fatalf("%+v, %v", h.Wires, err)
	}
	var of []string
	for _, f := range rep.Findings {
		if strings.Contains(f.What, "unless") {
			of = append(of, f.Did)
		}
		if strings.Contains(f.What, "yard") && f.Did != "left out" {
			t.Error(f)
		}
	}
	if len(of) != 1 || !strings.HasPrefix(of[0], "taken") {
		t.Errorf("said of it: %q", of)
	}
}
